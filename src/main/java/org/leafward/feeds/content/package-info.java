/**
 * Where the entries of a document come from: a class for each thing that calendars show.
 */
@NullMarked
package org.leafward.feeds.content;

import org.jspecify.annotations.NullMarked;
