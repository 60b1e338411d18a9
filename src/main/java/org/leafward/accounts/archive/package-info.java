/**
 * What a person takes away, as a file, and back.
 */
@NullMarked
package org.leafward.accounts.archive;

import org.jspecify.annotations.NullMarked;
