/**
 * The tables of accounts.
 */
@NullMarked
package org.leafward.accounts.store;

import org.jspecify.annotations.NullMarked;
