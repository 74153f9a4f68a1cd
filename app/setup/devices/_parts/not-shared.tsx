/** How the program is started so that the house reaches it. */
export function NotShared() {
  return (
    <>
      <p>To let phones and tablets of your home network in, stop the program and start it with:</p>
      <pre>
        <code>npm start -- --share</code>
      </pre>
      <p>Then pair each of them here, once. No other device gets in.</p>
    </>
  );
}
