/**
 * Tables of the register.
 */
@NullMarked
package org.leafward.register.store;

import org.jspecify.annotations.NullMarked;
