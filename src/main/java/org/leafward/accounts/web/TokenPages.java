package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Scope;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where people make tokens for their programs, and see and end them. */
@Controller
class TokenPages {

	private static final int PAGE = 20;

	private static final List<Choice> TIMES = List.of(new Choice("30", "a month"), new Choice("90", "three months"),
			new Choice("365", "a year"), new Choice("730", "two years"));

	private final PersonalTokens tokens;

	private final OwnTokens own;

	private final People people;

	private final Viewers viewers;

	private final Clock clock;

	TokenPages(PersonalTokens tokens, OwnTokens own, People people, Viewers viewers, Clock clock) {
		this.tokens = tokens;
		this.own = own;
		this.people = people;
		this.viewers = viewers;
		this.clock = clock;
	}

	/**
	 * The form.
	 *
	 * @param name what the token is called
	 * @param scope codes of what it may be used for
	 * @param days how long it works
	 */
	record Form(@Nullable String name, @Nullable List<String> scope, @Nullable String days) {

		Set<Scope> scopes() {
			Set<Scope> read = EnumSet.noneOf(Scope.class);
			for (String one : (this.scope != null) ? this.scope : List.<String>of()) {
				read.add(Given.word("scope", one, Scope.class));
			}
			return read;
		}

		public boolean has(String code) {
			return this.scope != null && this.scope.contains(code);
		}

	}

	/**
	 * A token in the list.
	 *
	 * @param id identifier
	 * @param name what it is called
	 * @param may what it may be used for
	 * @param more when it was made, was used and ends
	 * @param works whether it opens anything
	 */
	record Row(UUID id, String name, String may, String more, boolean works) {
	}

	@GetMapping("/me/tokens")
	String list(@RequestParam(defaultValue = "0") int page, Model model) {
		return show(page, new Form(null, List.of(Scope.READ.code()), Integer.toString(PersonalTokens.USUAL_DAYS)),
				Map.of(), null, model);
	}

	@PostMapping("/me/tokens")
	String make(@ModelAttribute("form") Form form, Model model, HttpServletResponse response) {
		PersonId person = person();
		try {
			PersonalTokens.Made made = this.tokens.make(person, form.name(), form.scopes(),
					Given.whole("days", form.days()));
			// The page shows a secret: neither caches nor the next page's server may
			// learn it.
			response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
			response.setHeader("Referrer-Policy", "no-referrer");
			return show(0, new Form(null, List.of(Scope.READ.code()), form.days()), Map.of(), made, model);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(0, form, ex.byField(), null, model);
		}
	}

	@PostMapping("/me/tokens/{id}/revoke")
	String revoke(@PathVariable UUID id) {
		this.own.revoke(id);
		return "redirect:/me/tokens";
	}

	private String show(int page, Form form, Map<String, String> errors, PersonalTokens.@Nullable Made made,
			Model model) {
		PersonId person = person();
		ZoneId zone = this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		Instant now = this.clock.instant();
		List<PersonalToken> found = this.own.list(Given.page(page), PAGE);
		model.addAttribute("section", "me");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("fresh", (made != null) ? made.secret() : null);
		model.addAttribute("scopes",
				Arrays.stream(Scope.values())
					.filter((one) -> one != Scope.RULES || this.viewers.current().specialist())
					.map((one) -> new Choice(one.code(), one.words()))
					.toList());
		model.addAttribute("times", TIMES);
		model.addAttribute("rows", found.stream().map((token) -> row(token, now, zone)).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() == PAGE && !this.own.list(page * PAGE + PAGE, 1).isEmpty());
		return "accounts/tokens";
	}

	private static Row row(PersonalToken token, Instant now, ZoneId zone) {
		String used = (token.lastUsedAt() != null) ? "last used " + day(token.lastUsedAt(), zone) : "not used yet";
		String ends;
		if (token.revokedAt() != null) {
			ends = "revoked " + day(token.revokedAt(), zone);
		}
		else {
			ends = (token.works(now) ? "works until " : "expired ") + day(token.expiresAt(), zone);
		}
		return new Row(token.id(), token.name(),
				token.scopes().stream().sorted().map(Scope::words).collect(Collectors.joining(", ")),
				"made %s, %s, %s".formatted(day(token.createdAt(), zone), used, ends), token.works(now));
	}

	private static String day(Instant instant, ZoneId zone) {
		return DayWords.of(LocalDate.ofInstant(instant, zone));
	}

	private PersonId person() {
		PersonId person = this.own.person();
		if (person == null) {
			throw new NotThere("The operator token acts for nobody; sign in as a person to make tokens.");
		}
		return person;
	}

}
