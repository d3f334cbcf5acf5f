import { useApp, useEditor } from "../app-context.tsx";

/** Lines the person should see and may answer. */
export function Notices() {
  const { editor } = useApp();
  const notices = useEditor((state) => state.notices);
  if (notices.length === 0) return null;
  return (
    <div className="notices">
      {notices.map((notice) => (
        <div
          key={notice.about}
          className="notice"
          data-tone={notice.tone}
          role={notice.tone === "trouble" ? "alert" : "status"}
        >
          <p>{notice.text}</p>
          {notice.action && (
            <button
              type="button"
              onClick={() => {
                editor.dismiss(notice.about);
                notice.action!.run();
              }}
            >
              {notice.action.label}
            </button>
          )}
          <button
            type="button"
            className="close"
            aria-label="Close this line"
            onClick={() => editor.dismiss(notice.about)}
          >
            <span aria-hidden="true">×</span>
          </button>
        </div>
      ))}
    </div>
  );
}
