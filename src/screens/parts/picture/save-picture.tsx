import './save-picture.css';
import { factOf } from '../../../domain/shop/registers.ts';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import type { Picture } from '../../../ui/picture/picture.ts';
import { pictureFileName, pictureWords as words } from '../../../words/picture-words.ts';
import { useSession, useShop } from '../app-context.ts';
import { FileButton } from '../file-button.tsx';

export interface SavePictureProps {
  /** Made when it is asked for. */
  readonly picture: () => Omit<Picture, 'foot'>;
  readonly testId?: string | undefined;
}

const kinds = ['svg', 'png'] as const;

/** Saves what a panel draws as a picture of its own, with whose it is and of which day. */
export const SavePicture = ({ picture, testId = 'picture' }: SavePictureProps) => {
  const session = useSession();
  const { registers } = useShop();
  const make = async (kind: (typeof kinds)[number]) => {
    const { pictureFile } = await import('../../../ui/picture/picture-file.ts');
    const day = session.today();
    const shop = factOf(registers, { register: 'shop', id: 'shop' })?.name ?? '';
    const drawn = { ...picture(), foot: words.foot(shop, day) };
    return pictureFile(drawn, kind, pictureFileName(drawn.title, { day, kind }));
  };
  return (
    <div class="save-picture">
      <Disclosure summary={words.save} look="quiet" testId={testId}>
        <div class="save-picture-kinds">
          {kinds.map((kind) => (
            <FileButton
              key={kind}
              {...words.kinds[kind]}
              tone="quiet"
              make={() => make(kind)}
              failed={words.failed}
              testId={`${testId}-${kind}`}
            />
          ))}
        </div>
      </Disclosure>
    </div>
  );
};
