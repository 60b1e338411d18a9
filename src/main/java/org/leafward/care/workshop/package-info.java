/**
 * Changing the rules: drafts, what they would change, versions and their history.
 */
@NullMarked
package org.leafward.care.workshop;

import org.jspecify.annotations.NullMarked;
