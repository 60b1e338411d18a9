/**
 * Changing the rules: drafts, what they would change, versions and their history.
 */
@NamedInterface("workshop")
@NullMarked
package org.leafward.care.workshop;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
