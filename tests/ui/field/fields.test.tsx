// @vitest-environment happy-dom
import { fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { describe, expect, test } from 'vitest';
import { ChoiceRow } from '../../../src/ui/field/choice-row.tsx';
import { Field, type FieldProps } from '../../../src/ui/field/field.tsx';
import { SelectField } from '../../../src/ui/field/select-field.tsx';

/** All that a screen reader says after the name of the slot. */
const described = (slot: HTMLElement): string =>
  (slot.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ')
    .trim();

const Typed = ({ start = '', ...props }: Partial<FieldProps> & { start?: string }) => {
  const [text, setText] = useState(start);
  return <Field label="Batch" {...props} value={text} onText={setText} />;
};

const slot = (): HTMLInputElement => screen.getByLabelText('Batch');

describe('a field', () => {
  test('is named by its label, described by its hint', () => {
    render(<Typed hint="As you call it." />);
    expect(described(slot())).toBe('As you call it.');
    expect(slot().hasAttribute('aria-invalid')).toBe(false);
  });

  test('keeps what was typed and says what is wrong with it', () => {
    render(<Typed start="6,15x" hint="In mm." error="No number." kind="number" />);
    expect(slot().value).toBe('6,15x');
    expect(slot().getAttribute('aria-invalid')).toBe('true');
    expect(described(slot())).toBe('In mm. No number.');
  });

  test('takes a text that is too long and says so instead of cutting it', () => {
    render(<Typed longest={5} tooLong={(length) => `${length} signs; 5 fit.`} />);
    fireEvent.input(slot(), { target: { value: 'Spring fair' } });
    expect(slot().value).toBe('Spring fair');
    expect(described(slot())).toBe('11 signs; 5 fit.');
    fireEvent.input(slot(), { target: { value: 'Fairs' } });
    expect(described(slot())).toBe('');
  });

  test('counts signs as people do, not bytes', () => {
    render(<Typed start="🪵🪵" longest={2} tooLong={() => 'too long'} />);
    expect(described(slot())).toBe('');
  });

  test.each([
    ['number', 'text', 'decimal'],
    ['date', 'date', ''],
    ['search', 'search', ''],
    ['url', 'text', 'url'],
    ['password', 'password', ''],
  ] as const)('of kind %s has the type %s and the keyboard "%s"', (kind, type, keyboard) => {
    render(<Typed kind={kind} />);
    expect(slot().type).toBe(type);
    expect(slot().getAttribute('inputmode') ?? '').toBe(keyboard);
  });

  test('lets each text run its own way', () => {
    render(<Typed />);
    expect(slot().getAttribute('dir')).toBe('auto');
  });

  test('hears Enter once, not while it is held', () => {
    let entered = 0;
    render(<Typed onEnter={() => (entered += 1)} />);
    fireEvent.keyDown(slot(), { key: 'Enter' });
    fireEvent.keyDown(slot(), { key: 'Enter', repeat: true });
    expect(entered).toBe(1);
  });
});

describe('a choice from a list', () => {
  const options = [
    { value: 'copper', label: 'Copper' },
    { value: 'silver', label: 'Nickel silver' },
  ] as const;

  test('shows that nothing is chosen until something is', () => {
    const chosen: string[] = [];
    render(
      <SelectField
        label="Ferrule"
        options={options}
        value={undefined}
        nothing="Choose"
        onChoose={(value) => chosen.push(value)}
      />,
    );
    const list: HTMLSelectElement = screen.getByLabelText('Ferrule');
    expect(list.selectedOptions[0]?.textContent).toBe('Choose');
    fireEvent.change(list, { target: { value: 'silver' } });
    expect(chosen).toEqual(['silver']);
  });
});

describe('a row of choices', () => {
  test('is a group of radio buttons of which one is taken', () => {
    const chosen: string[] = [];
    render(
      <ChoiceRow
        label="Wood"
        choices={[
          { value: 'ash', label: 'Ash' },
          { value: 'yew', label: 'Yew', detail: 'toxic dust' },
        ]}
        value="ash"
        error="Ash is out."
        onChoose={(value) => chosen.push(value)}
      />,
    );
    expect(described(screen.getByRole('group', { name: 'Wood' }))).toBe('Ash is out.');
    const [ash, yew] = screen.getAllByRole<HTMLInputElement>('radio');
    expect([ash?.checked, yew?.checked]).toEqual([true, false]);
    fireEvent.click(screen.getByRole('radio', { name: 'Yew toxic dust' }));
    expect(chosen).toEqual(['yew']);
  });
});
