import { useMemo, useState } from 'preact/hooks';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { boxWords as words } from '../../../words/box-words.ts';
import { goTo } from '../../parts/address.ts';
import { useSession } from '../../parts/app-context.ts';
import { BoxFace } from './box-face.tsx';
import { type BoxSheet, boxSheet, fitsOn, mostSheets, sheetsOf, unfinishedOn } from './box-view.ts';
import { type LabelFace, sizeOf } from './label-sheet.tsx';
import { type KeptSize, OnLabels } from './on-labels.tsx';
import { useTextMeasures } from './text-measures.ts';

const kept: KeptSize = { id: undefined };

/** Sheets for the box of the chosen trays: one for each piece, or one for all. */
export const BoxesToPrint = ({ trays }: { trays: readonly TrayRecord[] }) => {
  const view = useSession().view.value;
  const measures = useTextMeasures();
  const [each, setEach] = useState<'piece' | 'tray'>('piece');
  const sheets = useMemo(() => sheetsOf(view.shop, { trays, each }), [view, trays, each]);
  const face = useMemo<LabelFace<BoxSheet> | null>(
    () => measures && ((sheet, size) => <BoxFace {...{ sheet, size, measures }} />),
    [measures],
  );
  return (
    <OnLabels
      title={words.title}
      kept={kept}
      things={sheets.length > mostSheets ? [] : sheets}
      face={face}
      judge={(fact) => {
        const size = sizeOf(fact);
        const cut = measures ? sheets.filter((sheet) => !fitsOn(sheet, { size, measures })) : [];
        if (sheets.length > mostSheets) return { notice: null, refused: words.most(mostSheets) };
        if (cut.length === 0) return { notice: null };
        const notice = (
          <Notice tone="warn" title={words.tooSmall} testId="box-too-small">
            {words.tooSmallHelp(codesOf(cut))}
          </Notice>
        );
        return { notice, refused: words.tooSmall };
      }}
    >
      <ChoiceRow
        label={words.howMany}
        choices={[
          { value: 'piece', label: words.eachPiece, detail: words.eachPieceDetail },
          { value: 'tray', label: words.eachTray, detail: words.eachTrayDetail },
        ]}
        value={each}
        onChoose={setEach}
        testId="box-each"
      />
      <Hints trays={trays} />
    </OnLabels>
  );
};

/** What a maker should know before sheets are packed. */
const Hints = ({ trays }: { trays: readonly TrayRecord[] }) => {
  const { shop } = useSession().view.value;
  const without = trays.filter((tray) => boxSheet(shop, tray) === null);
  const unfinished = trays.filter((tray) => unfinishedOn(shop, tray) > 0);
  const count = unfinished.reduce((sum, tray) => sum + unfinishedOn(shop, tray), 0);
  const silent = trays.some((tray) => boxSheet(shop, tray)?.written === false);
  return (
    <>
      {count > 0 && (
        <Notice tone="warn" title={words.notCured(count, codesOf(unfinished))} testId="box-not-cured" />
      )}
      {without.length > 0 && <Notice tone="info" title={words.noSheet(codesOf(without))} testId="box-none" />}
      {silent && (
        <Notice
          tone="info"
          title={words.nothing}
          actions={<PressButton label={words.toTexts} onAct={() => goTo('set-up', 'labels')} />}
          testId="box-silent"
        />
      )}
    </>
  );
};

const mostNamed = 6;

/** Codes of trays, each once; a few of many. */
function codesOf(trays: readonly { readonly code: string }[]): string {
  const codes = [...new Set(trays.map(({ code }) => code))];
  return codes.length > mostNamed ? `${codes.slice(0, mostNamed).join(', ')} …` : codes.join(', ');
}
