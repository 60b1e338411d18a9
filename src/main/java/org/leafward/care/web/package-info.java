/**
 * Pages and API of the tasks.
 */
@NullMarked
package org.leafward.care.web;

import org.jspecify.annotations.NullMarked;
