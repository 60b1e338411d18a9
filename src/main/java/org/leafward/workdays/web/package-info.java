/** Pages of groups and workdays. */
@NullMarked
package org.leafward.workdays.web;

import org.jspecify.annotations.NullMarked;
