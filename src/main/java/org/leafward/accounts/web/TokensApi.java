package org.leafward.accounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Scope;
import org.leafward.measure.Given;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/**
 * Tokens by API: to see and to end them. None is made here, see {@code PersonalTokens}.
 */
@RestController
@Tag(name = "Tokens", description = "Your tokens for programs; new ones are made on the page My account, Tokens")
@RequestMapping("/api/v1/tokens")
class TokensApi {

	private final OwnTokens own;

	private final Clock clock;

	TokensApi(OwnTokens own, Clock clock) {
		this.own = own;
		this.clock = clock;
	}

	/**
	 * A token as answered, without the token itself.
	 *
	 * @param id identifier
	 * @param person id of the person for whom it acts
	 * @param name what they call it
	 * @param scopes read, write or rules
	 * @param createdAt when it was made
	 * @param expiresAt from when on it opens nothing
	 * @param lastUsedAt when it was last used, to the hour
	 * @param revokedAt when it was ended
	 * @param works whether it opens anything now
	 */
	record TokenAnswer(UUID id, UUID person, String name, List<String> scopes, Instant createdAt, Instant expiresAt,
			@Nullable Instant lastUsedAt, @Nullable Instant revokedAt, boolean works) {

		static TokenAnswer of(PersonalToken token, Instant now) {
			return new TokenAnswer(token.id(), token.person().value(), token.name(),
					token.scopes().stream().sorted().map(Scope::code).toList(), token.createdAt(), token.expiresAt(),
					token.lastUsedAt(), token.revokedAt(), token.works(now));
		}

	}

	@Operation(summary = "Your tokens, newest first; everybody's for the operator token")
	@GetMapping
	List<TokenAnswer> list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		Instant now = this.clock.instant();
		return this.own.list(Given.page(page), Given.size(size))
			.stream()
			.map((token) -> TokenAnswer.of(token, now))
			.toList();
	}

	@Operation(summary = "Revoke a token at once and for good")
	@DeleteMapping("/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void revoke(@PathVariable UUID id) {
		this.own.revoke(id);
	}

}
