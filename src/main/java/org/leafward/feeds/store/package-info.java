/**
 * The tables of schema feeds.
 */
@NullMarked
package org.leafward.feeds.store;

import org.jspecify.annotations.NullMarked;
