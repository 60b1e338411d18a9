/**
 * The clustered job that rebuilds stale documents.
 */
@NullMarked
package org.leafward.feeds.job;

import org.jspecify.annotations.NullMarked;
