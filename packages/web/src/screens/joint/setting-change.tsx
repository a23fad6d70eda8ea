import { useSay, useTrade } from '../../language/speech.tsx';
import { Button } from '../../ui/page.tsx';
import css from './tighten.module.css';

/** Another setting than at the bolt before: the tool is set anew, and the second person reads it. */
export function SettingChange({
  was,
  tool,
  setting,
  onSeen,
}: {
  readonly was: string | undefined;
  readonly tool: string;
  readonly setting: string;
  readonly onSeen: () => void;
}) {
  const say = useSay();
  const trade = useTrade();
  return (
    <div className={css.change} role="alert">
      <h2>{say(was === undefined ? 'tighten.setting-first' : 'tighten.setting-changes')}</h2>
      <p>{say('tighten.tool', { tool })}</p>
      {was === undefined ? null : (
        <p>
          <s>{say('tighten.setting-was', { setting: trade.settingText(was) })}</s>
        </p>
      )}
      <Button kind="act" onClick={onSeen}>
        {say('tighten.setting-seen', { setting })}
      </Button>
    </div>
  );
}
