package org.leafward.quick.web;

import java.util.List;
import org.springframework.modulith.NamedInterface;

/**
 * How to subscribe in a calendar program, and how soon it follows changes. As known from
 * their users and makers in 2026; menus are renamed now and then.
 *
 * @param name the program
 * @param how to add a calendar by its address
 * @param updates how long changes take
 */
@NamedInterface("drawers")
public record CalendarApp(String name, String how, String updates) {

	/** In the order in which most people have them. */
	public static final List<CalendarApp> ALL = List.of(
			new CalendarApp("iPhone and iPad",
					"Scan the code with the camera, or open the link here on the phone, and confirm.",
					"Follows in an hour to a day, as set for fetching in the settings of calendar accounts."),
			new CalendarApp("Mac", "In Calendar choose File, New Calendar Subscription, and paste the address.",
					"Set auto-refresh to every day or sooner in the same window."),
			new CalendarApp("Google Calendar, also on Android",
					"In a browser on a computer: the plus sign beside Other calendars, From URL, paste the address. It shows on the phone then.",
					"Looks by its own clock: 4 to 24 hours."),
			new CalendarApp("Outlook",
					"In Outlook on the web or the new Outlook: Add calendar, Subscribe from web, and paste the address; the link alone may be spoilt.",
					"About 3 hours on a desktop, up to a day and more on the web."),
			new CalendarApp("Thunderbird", "New Calendar, On the Network, and paste the address.",
					"As often as you set there."),
			new CalendarApp("Nextcloud", "New subscription from link, and paste the address.",
					"12 hours as we suggest, where its operator doesn’t set a week."));

}
