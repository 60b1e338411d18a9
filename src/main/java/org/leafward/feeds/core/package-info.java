/**
 * What a feed shows, worked out from tasks: values in, values out.
 */
@NamedInterface("core")
@NullMarked
package org.leafward.feeds.core;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
