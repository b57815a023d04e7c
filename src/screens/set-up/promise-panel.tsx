import './promise-panel.css';
import { Panel } from '../../ui/panel/panel.tsx';
import { promiseRows, promiseWords as words } from '../../words/promise-words.ts';

/** What happens when something goes wrong, and what can be lost. */
export const PromisePanel = () => (
  <Panel title={words.title} lead={words.lead} testId="promise">
    <table class="promise">
      <caption class="unseen">{words.title}</caption>
      <thead>
        <tr>
          <th scope="col">{words.fault}</th>
          <th scope="col">{words.happens}</th>
          <th scope="col">{words.lost}</th>
        </tr>
      </thead>
      <tbody>
        {promiseRows.map(({ fault, happens, lost }) => (
          <tr key={fault}>
            <th scope="row">{fault}</th>
            <td>{happens}</td>
            <td data-head={`${words.lost}: `}>{lost}</td>
          </tr>
        ))}
      </tbody>
    </table>
    <p>{words.not}</p>
  </Panel>
);
