/**
 * What a poll is answered with, without asking the database: an index of all addresses in
 * memory, which the database keeps right by telling each node of every change.
 */
@NullMarked
package org.leafward.feeds.poll;

import org.jspecify.annotations.NullMarked;
