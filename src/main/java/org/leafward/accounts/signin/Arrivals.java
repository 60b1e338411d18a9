package org.leafward.accounts.signin;

import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Granted;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Roles;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who somebody is whose address has just been confirmed. */
@Service
public class Arrivals {

	private final People people;

	private final Roles roles;

	private final PersonalRecords records;

	private final boolean open;

	Arrivals(People people, Roles roles, PersonalRecords records,
			@Value("${leafward.accounts.open:true}") boolean open) {
		this.people = people;
		this.roles = roles;
		this.records = records;
		this.open = open;
	}

	/**
	 * Whether an address gets a link.
	 * @param email the address
	 * @return true for those who are known, and for all where anybody may join
	 */
	public boolean welcome(String email) {
		return this.open || this.people.withAddress(email).isPresent();
	}

	/**
	 * The person who has an address, or a new one.
	 * @param email the confirmed address
	 * @param name what a new one is called
	 * @return empty when new people may not join here
	 */
	@Transactional
	public Optional<SignedIn> arrive(String email, @Nullable String name) {
		Optional<Person> known = this.people.withAddress(email);
		if (known.isEmpty() && !this.open) {
			return Optional.empty();
		}
		Person person = known.orElseGet(() -> this.people.join(called(email, name), email, ZoneId.of("UTC")));
		this.people.confirm(person.id());
		return Optional.of(SignedIn.person(person, this.roles.of(person.id())));
	}

	/**
	 * Adds a confirmed address to what somebody has. When it is the address of somebody
	 * known, that person gets what they have.
	 * @param who somebody without an address, or with one that isn't confirmed
	 * @param email the address
	 * @return who it is now; empty when they are gone
	 */
	@Transactional
	public Optional<SignedIn> add(PersonId who, String email) {
		Optional<Person> adds = this.people.find(who);
		if (adds.isEmpty()) {
			return Optional.empty();
		}
		Optional<Person> known = this.people.withAddress(email).filter((one) -> !one.id().equals(who));
		if (known.isPresent()) {
			this.records.merge(who, known.get().id());
			this.people.confirm(known.get().id());
			return Optional.of(SignedIn.person(known.get(), this.roles.of(known.get().id())));
		}
		if (adds.get().email() == null) {
			this.people.giveAddress(who, email);
		}
		else if (adds.get().email().equalsIgnoreCase(email)) {
			this.people.confirm(who);
		}
		else {
			return Optional.empty();
		}
		return this.people.find(who).map((one) -> SignedIn.person(one, this.roles.of(who)));
	}

	/**
	 * Who is signed in, with the roles of this moment.
	 * @param known as the session has it
	 * @return empty when they are gone
	 */
	public Optional<SignedIn> now(SignedIn known) {
		PersonId id = known.person();
		if (id == null) {
			return Optional.of(known);
		}
		return this.people.find(id).map((person) -> {
			Granted granted = this.roles.of(id);
			return SignedIn.person(person, granted);
		});
	}

	/** The part before the at sign, until they say what they are called. */
	private static String called(String email, @Nullable String name) {
		String wanted = (name != null && !name.isBlank()) ? name : email.substring(0, email.indexOf('@'));
		// Nobody is turned away for what another server, or their address, makes of a
		// name.
		String plain = wanted.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\u2028\u2029]+", " ").strip();
		return plain.isEmpty() ? "Gardener" : plain.substring(0, Math.min(100, plain.length())).strip();
	}

}
