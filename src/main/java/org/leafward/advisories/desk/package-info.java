/**
 * Where specialists write advisories: drafts, whom they would reach, and sending.
 */
@NamedInterface("desk")
@NullMarked
package org.leafward.advisories.desk;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
