/**
 * What happens elsewhere and makes a document stale.
 */
@NullMarked
package org.leafward.feeds.on;

import org.jspecify.annotations.NullMarked;
