/**
 * The one place that builds clients for outgoing HTTP. Others ask Spring for a
 * {@code RestClient.Builder}, which comes bounded in time, size and reach.
 */
@NullMarked
package org.leafward.platform.http;

import org.jspecify.annotations.NullMarked;
