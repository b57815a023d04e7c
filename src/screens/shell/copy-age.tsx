import './copy-age.css';
import { logSize } from '../../app/log-size.ts';
import { toneOfOutside } from '../../app/outside-age.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Icon } from '../../ui/icon/icon.tsx';
import { sinceWhen, copyAgeWords as words } from '../../words/copy-age-words.ts';
import { hrefOf } from '../parts/address.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';
import { ReplicaSign } from './replica-sign.tsx';

/** How old the last copy outside of the tablet is, always in view, and the way to make one; above it how it stands with other tablets. */
export const CopyAge = () => {
  const { outside } = useApp().copies.known.value;
  const session = useSession();
  const shop = useShop();
  const now = useNow();
  const zone = factOf(shop.registers, { register: 'shop', id: 'shop' })?.zone ?? 'UTC';
  let firstDay: string | undefined;
  for (const day of shop.days.keys()) if (firstDay === undefined || day < firstDay) firstDay = day;
  const tone = toneOfOutside({ outside, now, log: logSize(session), firstDay });
  return (
    <div class="copy-age-signs">
      <ReplicaSign now={now} zone={zone} />
      <a class="copy-age" href={hrefOf('set-up', 'files')} data-tone={tone} data-testid="copy-age">
        {tone !== 'calm' && <Icon name="warn" size={24} />}
        <span>{words.outside}:</span>
        <span>{outside ? sinceWhen({ at: outside.at, now, zone }) : words.never}</span>
      </a>
    </div>
  );
};
