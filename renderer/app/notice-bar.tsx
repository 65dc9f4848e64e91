import { useApp, useAppStore } from '../state/use-app.ts';

/** What was said last across the top, until it is put away. */
export const NoticeBar = () => {
  const notice = useApp((state) => state.notice);
  const { notify } = useAppStore().getState();
  return (
    <div className="notice-place" role={notice?.tone === 'problem' ? 'alert' : 'status'}>
      {notice === null ? null : (
        <div className={`notice notice-${notice.tone}`}>
          <span>
            {notice.tone === 'problem' ? <span aria-hidden="true">▲ </span> : null}
            {notice.text}
          </span>
          <button type="button" className="button" onClick={() => notify(null)}>
            Put away
          </button>
        </div>
      )}
    </div>
  );
};

/** What screen readers are told without the focus being moved. */
export const Announcer = () => (
  <div className="unseen" role="status" aria-live="polite" id="announcer">
    {useApp((state) => state.announcement)}
  </div>
);
