package org.leafward.accounts.web;

import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/** Somebody who is known: the operator, or in the demo one of its invented people. */
final class SignedIn extends AbstractAuthenticationToken implements Serializable {

	private static final long serialVersionUID = 1L;

	private static final SimpleGrantedAuthority SPECIALIST = new SimpleGrantedAuthority("ROLE_SPECIALIST");

	private final @Nullable UUID person;

	private final String name;

	private SignedIn(@Nullable UUID person, String name, Collection<? extends GrantedAuthority> authorities) {
		super(authorities);
		this.person = person;
		this.name = name;
		setAuthenticated(true);
	}

	static SignedIn operator() {
		return new SignedIn(null, "Operator", List.of(new SimpleGrantedAuthority("ROLE_OPERATOR"), SPECIALIST));
	}

	static SignedIn person(UUID person, String name, boolean specialist) {
		SimpleGrantedAuthority gardener = new SimpleGrantedAuthority("ROLE_GARDENER");
		return new SignedIn(person, name, specialist ? List.of(gardener, SPECIALIST) : List.of(gardener));
	}

	boolean mayChangeRules() {
		return getAuthorities().contains(SPECIALIST);
	}

	@Nullable UUID person() {
		return this.person;
	}

	@Override
	public Object getCredentials() {
		return "";
	}

	@Override
	public Object getPrincipal() {
		return this.name;
	}

	@Override
	public String getName() {
		return this.name;
	}

}
