/**
 * Atom feeds (RFC 4287) of advisories, an entry for each message.
 */
@NullMarked
package org.leafward.advisories.atom;

import org.jspecify.annotations.NullMarked;
