/**
 * Feeds over HTTP: the subscription address and the JSON that makes one.
 */
@NullMarked
package org.leafward.feeds.web;

import org.jspecify.annotations.NullMarked;
