package org.leafward.accounts.signin;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Granted;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Scope;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/**
 * Somebody who is known: a person, a program that acts for one, or whoever has the
 * operator token. A session keeps it, but for who it is only: roles are read anew for
 * each request.
 */
public final class SignedIn extends AbstractAuthenticationToken {

	private static final long serialVersionUID = 2L;

	private static final SimpleGrantedAuthority OPERATOR = new SimpleGrantedAuthority("ROLE_OPERATOR");

	private static final SimpleGrantedAuthority COORDINATOR = new SimpleGrantedAuthority("ROLE_COORDINATOR");

	private static final SimpleGrantedAuthority SPECIALIST = new SimpleGrantedAuthority("ROLE_SPECIALIST");

	private static final SimpleGrantedAuthority GARDENER = new SimpleGrantedAuthority("ROLE_GARDENER");

	private final @Nullable UUID person;

	private final String name;

	private final TreeSet<String> counties;

	private SignedIn(@Nullable UUID person, String name, Set<String> counties, List<GrantedAuthority> authorities) {
		super(authorities);
		this.person = person;
		this.name = name;
		this.counties = new TreeSet<>(counties);
		setAuthenticated(true);
	}

	/**
	 * Whoever has the operator token.
	 * @return somebody without a name of their own
	 */
	public static SignedIn operator() {
		List<GrantedAuthority> authorities = new ArrayList<>(List.of(OPERATOR, SPECIALIST));
		authorities.addAll(scopes(EnumSet.allOf(Scope.class)));
		return new SignedIn(null, "Operator", Set.of(), authorities);
	}

	/**
	 * A person.
	 * @param person who
	 * @param granted what they may do beyond their own plants
	 * @return the person, signed in
	 */
	public static SignedIn person(Person person, Granted granted) {
		return new SignedIn(person.id().value(), person.name(), granted.counties(), roles(granted));
	}

	/**
	 * A program that acts for a person.
	 * @param person for whom
	 * @param granted what they may do beyond their own plants
	 * @param scopes what of that the program may do
	 * @return the person; without the scope for rules they are no specialist
	 */
	public static SignedIn program(Person person, Granted granted, Set<Scope> scopes) {
		List<GrantedAuthority> authorities = roles(granted);
		if (!scopes.contains(Scope.RULES)) {
			authorities.remove(SPECIALIST);
		}
		authorities.addAll(scopes(scopes));
		return new SignedIn(person.id().value(), person.name(), granted.counties(), authorities);
	}

	private static List<GrantedAuthority> roles(Granted granted) {
		List<GrantedAuthority> authorities = new ArrayList<>();
		authorities.add(GARDENER);
		granted.roles()
			.stream()
			.map((role) -> new SimpleGrantedAuthority("ROLE_" + role.name()))
			.forEach(authorities::add);
		if (granted.roles().contains(Role.OPERATOR) && !authorities.contains(SPECIALIST)) {
			authorities.add(SPECIALIST);
		}
		return authorities;
	}

	private static List<SimpleGrantedAuthority> scopes(Set<Scope> scopes) {
		return scopes.stream().map(SignedIn::authority).toList();
	}

	private static SimpleGrantedAuthority authority(Scope scope) {
		return new SimpleGrantedAuthority("SCOPE_" + scope.code());
	}

	/**
	 * Whether a call may be of this kind.
	 * @param scope the kind
	 * @return false for people who came by a page: they have no token
	 */
	public boolean holds(Scope scope) {
		return getAuthorities().contains(authority(scope));
	}

	/**
	 * Whether they keep the rules.
	 * @return true for specialists and operators
	 */
	public boolean mayChangeRules() {
		return getAuthorities().contains(SPECIALIST);
	}

	/**
	 * Whether they look after groups.
	 * @return true for coordinators
	 */
	public boolean coordinates() {
		return getAuthorities().contains(COORDINATOR);
	}

	/**
	 * Whether they run the server.
	 * @return true for operators, by role or by token
	 */
	public boolean mayDoEverything() {
		return getAuthorities().contains(OPERATOR);
	}

	/**
	 * Who it is.
	 * @return null for the operator token
	 */
	public @Nullable PersonId person() {
		return (this.person != null) ? new PersonId(this.person) : null;
	}

	/**
	 * The counties that they serve as a specialist.
	 * @return their names
	 */
	public Set<String> counties() {
		return Set.copyOf(this.counties);
	}

	@Override
	public Object getCredentials() {
		return "";
	}

	/** What sessions are found by: no name, since it is kept with them. */
	@Override
	public Object getPrincipal() {
		return (this.person != null) ? this.person.toString() : "operator";
	}

	/** Sessions are listed under it. */
	@Override
	public String getName() {
		return getPrincipal().toString();
	}

	/**
	 * What they are called.
	 * @return a name
	 */
	public String called() {
		return this.name;
	}

}
