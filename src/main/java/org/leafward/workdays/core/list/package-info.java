/** What is done in which order at a site, and where things stand: pure. */
@NullMarked
package org.leafward.workdays.core.list;

import org.jspecify.annotations.NullMarked;
