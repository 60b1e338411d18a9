/**
 * What a feed shows, worked out from tasks: values in, values out.
 */
@NullMarked
package org.leafward.feeds.core;

import org.jspecify.annotations.NullMarked;
