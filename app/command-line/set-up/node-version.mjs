const OLDEST = { major: 20, minor: 19 };
const NEWEST_MAJOR = 26;

/**
 * Says why a version of Node.js cannot run the program. The driver of the database states 20 to 26,
 * the client generator 20.19 and later.
 *
 * @param {string} version as in process.versions.node: "20.19.0"
 * @returns {string | null} the reason in words, or null for a version that will do
 */
export function refusedNodeVersion(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const tooOld = major < OLDEST.major || (major === OLDEST.major && minor < OLDEST.minor);
  if (!tooOld && major <= NEWEST_MAJOR) return null;
  return `wadding needs Node.js ${OLDEST.major}.${OLDEST.minor} to ${NEWEST_MAJOR}; this is ${version}. Install one of these from https://nodejs.org and start again.`;
}
