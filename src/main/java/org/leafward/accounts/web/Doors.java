package org.leafward.accounts.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.stereotype.Component;

/** Other servers at which somebody may sign in, by OpenID Connect; none by default. */
@Component
class Doors {

	private final List<Door> doors = new ArrayList<>();

	Doors(ObjectProvider<ClientRegistrationRepository> registrations) {
		if (registrations.getIfAvailable() instanceof Iterable<?> all) {
			for (Object one : all) {
				if (one instanceof ClientRegistration registration) {
					this.doors.add(new Door(registration.getClientName(),
							"/oauth2/authorization/" + registration.getRegistrationId()));
				}
			}
		}
	}

	/**
	 * A way in.
	 *
	 * @param name what the operator called it
	 * @param href where it begins
	 */
	record Door(String name, String href) {
	}

	List<Door> all() {
		return List.copyOf(this.doors);
	}

	boolean any() {
		return !this.doors.isEmpty();
	}

}
