/**
 * Where specialists write advisories: drafts, whom they would reach, and sending.
 */
@NullMarked
package org.leafward.advisories.desk;

import org.jspecify.annotations.NullMarked;
