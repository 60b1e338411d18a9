package org.leafward.accounts.signin;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.Granted;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.Scope;
import org.leafward.accounts.Secret;
import org.leafward.accounts.store.TokenTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tokens by which programs act for people. They are made on the pages only, by somebody
 * who is signed in: a token that got about can't make another that outlives it.
 */
@Service
public class PersonalTokens {

	/** Begins each token, so that one that got about can be searched for. */
	public static final String PREFIX = "leafward_";

	/** How long a token works when nobody says, days. */
	public static final int USUAL_DAYS = 365;

	/** The longest time for which a token works, days. */
	public static final int MOST_DAYS = 730;

	private static final int MOST_TOKENS = 50;

	/** Our tokens have 52 characters; what is much longer isn't worth a question. */
	private static final int LONGEST = 100;

	private static final Duration USE_NOTED = Duration.ofHours(1);

	private static final Duration SHOWN_AFTER_END = Duration.ofDays(90);

	private final TokenTable tokens;

	private final People people;

	private final Roles roles;

	private final AuditLog audit;

	private final Clock clock;

	PersonalTokens(TokenTable tokens, People people, Roles roles, AuditLog audit, Clock clock) {
		this.tokens = tokens;
		this.people = people;
		this.roles = roles;
		this.audit = audit;
		this.clock = clock;
	}

	/**
	 * A token that was just made.
	 *
	 * @param token what is kept
	 * @param secret the token itself, which is never shown again
	 */
	public record Made(PersonalToken token, String secret) {
	}

	/**
	 * Makes a token.
	 * @param person for whom
	 * @param name what they call it, 1 to 100 characters of one line
	 * @param scopes what it may be used for, at least one
	 * @param days how long it works, 1 to {@value #MOST_DAYS}
	 * @return the token
	 * @throws BadInput when one of them can't be used, or the person has
	 * {@value #MOST_TOKENS} that work
	 */
	@Transactional
	public Made make(PersonId person, @Nullable String name, Set<Scope> scopes, int days) {
		String clean = Given.line("name", Given.text("name", name));
		if (clean.length() > 100) {
			throw new BadInput("name is longer than 100 characters", "name", "name the program that is to use it");
		}
		if (scopes.isEmpty()) {
			throw new BadInput("the token would open nothing", "scope", "tick at least one thing that it may do");
		}
		if (scopes.contains(Scope.RULES) && !keepsRules(this.roles.of(person))) {
			throw new BadInput("only specialists change rules", "scope", "leave out the rules");
		}
		if (days < 1 || days > MOST_DAYS) {
			throw new BadInput("days %d is outside 1 to %d".formatted(days, MOST_DAYS), "days",
					"choose for how long it is needed");
		}
		Instant now = this.clock.instant();
		this.tokens.tidy(person, now.minus(SHOWN_AFTER_END));
		if (this.tokens.working(person, now) >= MOST_TOKENS) {
			throw new BadInput("you have %d tokens already".formatted(MOST_TOKENS), "name",
					"revoke those that are no longer used");
		}
		PersonalToken token = new PersonalToken(UUID.randomUUID(), person, clean, scopes, now,
				now.plus(Duration.ofDays(days)), null, null);
		String secret = PREFIX + Secret.make();
		this.tokens.add(token, secret);
		this.audit.note(Deed.MADE_TOKEN, person, codes(scopes));
		return new Made(token, secret);
	}

	private static boolean keepsRules(Granted granted) {
		return granted.roles().contains(Role.SPECIALIST) || granted.roles().contains(Role.OPERATOR);
	}

	private static String codes(Set<Scope> scopes) {
		return String.join(" ", EnumSet.copyOf(scopes).stream().map(Scope::code).toList());
	}

	/**
	 * Who uses a token, with the roles of this moment.
	 * @param secret what somebody says is a token
	 * @return empty when there is none, it has expired, or was revoked
	 */
	public Optional<SignedIn> user(String secret) {
		if (!secret.startsWith(PREFIX) || secret.length() > LONGEST) {
			return Optional.empty();
		}
		Instant now = this.clock.instant();
		Optional<PersonalToken> found = this.tokens.withSecret(secret).filter((token) -> token.works(now));
		found.ifPresent((token) -> {
			Instant since = now.minus(USE_NOTED);
			if (token.lastUsedAt() == null || token.lastUsedAt().isBefore(since)) {
				this.tokens.used(token.id(), now, since);
			}
		});
		return found.flatMap((token) -> this.people.find(token.person())
			.map((person) -> SignedIn.program(person, this.roles.of(person.id()), token.scopes())));
	}

	/**
	 * Tokens, newest first.
	 * @param person whose; null for everybody's
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<PersonalToken> list(@Nullable PersonId person, int page, int size) {
		return this.tokens.list(person, page, size);
	}

	/**
	 * Looks a token up.
	 * @param id which
	 * @return empty when there is none
	 */
	public Optional<PersonalToken> find(UUID id) {
		return this.tokens.find(id);
	}

	/**
	 * Ends a token at once and for good; again changes nothing.
	 * @param token which
	 */
	@Transactional
	public void revoke(PersonalToken token) {
		if (this.tokens.revoke(token.id(), this.clock.instant())) {
			this.audit.note(Deed.REVOKED_TOKEN, token.person(), codes(token.scopes()));
		}
	}

}
