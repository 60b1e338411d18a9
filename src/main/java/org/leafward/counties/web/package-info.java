/**
 * The addresses that calendars subscribe to, and the page that tells them.
 */
@NullMarked
package org.leafward.counties.web;

import org.jspecify.annotations.NullMarked;
