/**
 * The one place that builds clients for outgoing HTTP. Others ask Spring for a
 * {@code RestClient.Builder}, which comes bounded in time, size and reach. For an address
 * that a person gave they ask for the one with {@code @Qualifier("strangers")}, which
 * reaches servers in the public Internet only.
 */
@NullMarked
package org.leafward.platform.http;

import org.jspecify.annotations.NullMarked;
