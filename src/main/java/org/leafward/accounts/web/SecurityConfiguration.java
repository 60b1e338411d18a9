package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import org.leafward.accounts.signin.Arrivals;
import org.leafward.accounts.signin.LinkMail;
import org.leafward.accounts.signin.LinkProvider;
import org.leafward.accounts.signin.OneTimeLinks;
import org.leafward.accounts.signin.OperatorToken;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.AuthenticationServiceException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.logout.HeaderWriterLogoutHandler;
import org.springframework.security.web.authentication.ott.OneTimeTokenAuthenticationFilter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter.Directive;
import org.springframework.security.web.header.writers.ContentSecurityPolicyHeaderWriter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * What may be opened. Feeds, and the links in messages, are open to whoever has the
 * address, calendars of counties to everybody. The API is open to tokens, the operator's
 * and people's own, as far as their scopes go; sessions don't count there, so no other
 * site's page can use them. Pages are open to whoever is signed in; rules are changed by
 * specialists, of whom the operator is one. Whose a thing is, is asked where it is looked
 * up: {@code register.OpenSites}, {@code care.web.Mine}. Calculators are open to
 * everybody, since they read and keep nothing. Everything else is closed.
 */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

	private static final String CONTENT_POLICY = "default-src 'none'; object-src 'none'; style-src 'self'; img-src 'self' data:; "
			+ "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

	/**
	 * Pages of people who are signed in may load script files of this server, which may
	 * ask this server; nothing in a page is ever run.
	 */
	private static final String LIVE_POLICY = CONTENT_POLICY + "; script-src 'self'; connect-src 'self'";

	/** The page that asks a browser for a subscription. */
	private static final String PUSH_PAGE = "/reminders/push";

	private static final String PUSH_POLICY = CONTENT_POLICY + "; script-src 'self'; worker-src 'self'";

	private static final String SIGN_IN = "/sign-in";

	private static final String READING = "/reading";

	private final boolean demo;

	SecurityConfiguration(Environment environment) {
		this.demo = environment.acceptsProfiles(Profiles.of("demo"));
	}

	@Bean
	@Order(1)
	SecurityFilterChain feedSecurity(HttpSecurity http) {
		// Nobody is anybody here, and what is asked a thousand times a second passes no
		// filter that it doesn't need.
		return http.securityMatcher("/f/**", "/c/**")
			.authorizeHttpRequests((requests) -> requests.anyRequest().permitAll())
			.securityContext((context) -> context.disable())
			.sessionManagement((sessions) -> sessions.disable())
			.anonymous((anonymous) -> anonymous.disable())
			.servletApi((servlet) -> servlet.disable())
			.logout((logout) -> logout.disable())
			.csrf(AbstractHttpConfigurer::disable)
			// The feed says itself how it may be cached.
			.headers((headers) -> headers.cacheControl((cache) -> cache.disable())
				.referrerPolicy(SecurityConfiguration::keptFromOthers))
			.requestCache((cache) -> cache.disable())
			.build();
	}

	@Bean
	@Order(2)
	SecurityFilterChain apiSecurity(HttpSecurity http, OperatorToken operator, PersonalTokens tokens,
			RateLimits limits) {
		ApiRefusals refusals = new ApiRefusals();
		return http.securityMatcher("/api/**").authorizeHttpRequests((requests) -> {
			if (this.demo) {
				requests.requestMatchers("/api/docs", "/api/docs/**").permitAll();
			}
			requests.requestMatchers(HttpMethod.GET, "/api/calculators/*").permitAll();
			requests.anyRequest().access(ApiNeeds.met());
		})
			.sessionManagement((sessions) -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.csrf(AbstractHttpConfigurer::disable)
			.requestCache((cache) -> cache.disable())
			.headers((headers) -> headers.referrerPolicy(SecurityConfiguration::keptFromOthers))
			.addFilterBefore(new BearerTokenFilter(operator, tokens), AuthorizationFilter.class)
			.addFilterAfter(new RateLimitFilter(limits), BearerTokenFilter.class)
			.exceptionHandling((handling) -> handling.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
			.build();
	}

	/**
	 * Advisories for programs and for the pages of others, the same for everybody. They
	 * say themselves how they may be kept, and one of them may stand in a frame.
	 */
	@Bean
	@Order(3)
	SecurityFilterChain advisorySecurity(HttpSecurity http) {
		return http
			.securityMatcher("/advisories/feed.atom", "/advisories/*/feed.atom", "/advisories/current.json",
					"/advisories/*/current.json", "/advisories/*/advisories.ics", "/advisories/*/es/advisories.ics",
					"/advisories/embed", "/advisories/*/embed", "/advisories/messages/*", "/advisories/*/pictures/*",
					"/season-dates/*/pictures/*")
			.authorizeHttpRequests((requests) -> requests.requestMatchers(HttpMethod.GET, "/**")
				.permitAll()
				.requestMatchers(HttpMethod.HEAD, "/**")
				.permitAll()
				.anyRequest()
				.denyAll())
			.sessionManagement((sessions) -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.csrf(AbstractHttpConfigurer::disable)
			.requestCache((cache) -> cache.disable())
			.headers((headers) -> headers.cacheControl((cache) -> cache.disable())
				.frameOptions((frames) -> frames.disable())
				.referrerPolicy(SecurityConfiguration::keptFromOthers))
			.build();
	}

	/**
	 * Links in messages carry their own secret; who follows one is signed in as nobody.
	 */
	@Bean
	@Order(4)
	SecurityFilterChain linkSecurity(HttpSecurity http, RateLimits limits) {
		return http.securityMatcher("/r/**", "/u/**", "/w/**")
			.authorizeHttpRequests((requests) -> requests.anyRequest().permitAll())
			.sessionManagement((sessions) -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.csrf(AbstractHttpConfigurer::disable)
			.requestCache((cache) -> cache.disable())
			.headers(SecurityConfiguration::ofPages)
			.addFilterBefore(new RateLimitFilter(limits), AuthorizationFilter.class)
			.build();
	}

	@Bean
	@Order(5)
	SecurityFilterChain pageSecurity(HttpSecurity http, Arrivals arrivals, LinkProvider links, OneTimeLinks tokens,
			LinkMail mail, LinkRequests requests, RateLimits limits, Doors doors, OpenIdArrival openId, Clock clock,
			@Value("${leafward.accounts.longest-session:90d}") Duration longest) {
		String signIn = this.demo ? "/people" : SIGN_IN;
		// Changes how a browser shows pages and nothing else; a mark against forgery
		// would open a session for each stranger who reads.
		http.csrf((csrf) -> csrf.ignoringRequestMatchers(READING)).authorizeHttpRequests((opens) -> {
			opens
				.requestMatchers(HttpMethod.GET, "/js/push.js", "/push-worker.js", "/js/live.js", "/js/checklist.js",
						"/workdays/checklist-worker.js", "/js/htmx-2.0.8.min.js")
				.permitAll();
			opens.requestMatchers("/css/**", "/favicon.ico", "/actuator/health", SIGN_IN, SIGN_IN + "/*", "/error")
				.permitAll();
			opens.requestMatchers(HttpMethod.GET, "/calculators", "/calculators/*").permitAll();
			opens.requestMatchers("/quick", "/quick/**", "/regions/map.svg").permitAll();
			opens.requestMatchers(HttpMethod.GET, "/county-calendars", "/join/*").permitAll();
			opens.requestMatchers(HttpMethod.POST, READING).permitAll();
			if (this.demo) {
				opens.requestMatchers("/people", "/people/*").permitAll();
			}
			opens.requestMatchers("/workshop", "/workshop/**").hasRole("SPECIALIST");
			opens
				.requestMatchers("/advisories/proposals", "/advisories/proposals/**", "/advisories/conditions",
						"/advisories/conditions/**", "/advisories/compose", "/advisories/compose/**")
				.hasRole("SPECIALIST");
			opens
				.requestMatchers(HttpMethod.GET, "/advisories", "/advisories/*", "/advisories/*/share", "/season-dates",
						"/season-dates/**")
				.permitAll();
			opens
				.requestMatchers("/replanning", "/accounts", "/accounts/**", "/audit", "/mail-check", "/mail-check/**",
						"/post-room", "/post-room/**", "/actuator", "/actuator/**")
				.hasRole("OPERATOR");
			opens.anyRequest().hasAnyRole("GARDENER", "OPERATOR");
		})
			.oneTimeTokenLogin((login) -> login.authenticationProvider(links)
				.tokenService(tokens)
				.tokenGeneratingUrl(SIGN_IN + "/link")
				.generateRequestResolver(requests)
				.tokenGenerationSuccessHandler(mail)
				.loginPage(SIGN_IN)
				.loginProcessingUrl(SIGN_IN + "/once")
				.showDefaultSubmitPage(false)
				.authenticationFailureHandler(new RefusedSignIn()))
			.requestCache((cache) -> cache.requestCache(WantedPage.KEPT))
			.addFilterBefore(new FreshRoles(arrivals, clock, longest), AuthorizationFilter.class)
			.addFilterBefore(new RateLimitFilter(limits), OneTimeTokenAuthenticationFilter.class)
			.exceptionHandling((handling) -> handling.accessDeniedHandler(new Refused(signIn))
				.authenticationEntryPoint(new SignInFirst(signIn)))
			.logout((logout) -> logout.logoutUrl("/sign-out")
				.logoutSuccessUrl(signIn)
				.addLogoutHandler(new HeaderWriterLogoutHandler(
						new ClearSiteDataHeaderWriter(Directive.CACHE, Directive.COOKIES, Directive.STORAGE))))
			.headers(SecurityConfiguration::ofPages);
		if (doors.any()) {
			http.oauth2Login(
					(login) -> login.loginPage(SIGN_IN).successHandler(openId).failureHandler(new RefusedSignIn()));
		}
		return http.build();
	}

	/** An answer may come with a policy of its own. */
	private static void contentPolicy(HttpServletRequest request, HttpServletResponse response) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		boolean asks = path.equals(PUSH_PAGE) || path.equals(PUSH_PAGE + "/trial");
		boolean known = SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn;
		new ContentSecurityPolicyHeaderWriter(asks ? PUSH_POLICY : known ? LIVE_POLICY : CONTENT_POLICY)
			.writeHeaders(request, response);
	}

	private static void ofPages(HeadersConfigurer<HttpSecurity> headers) {
		headers.addHeaderWriter(SecurityConfiguration::contentPolicy)
			.referrerPolicy(SecurityConfiguration::keptFromOthers)
			.crossOriginOpenerPolicy((opener) -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN));
	}

	/** Nothing here asks where somebody comes from, and addresses can hold secrets. */
	private static void keptFromOthers(HeadersConfigurer<HttpSecurity>.ReferrerPolicyConfig referrer) {
		referrer.policy(ReferrerPolicy.NO_REFERRER);
	}

	/**
	 * A measurement for each filter that a request passes costs more than the filters.
	 */
	@Bean
	SecurityObservationSettings filtersUnmeasured() {
		return SecurityObservationSettings.noObservations();
	}

	/** There are no passwords here; this keeps Boot from making a user of its own. */
	@Bean
	AuthenticationManager authenticationManager() {
		return (authentication) -> {
			throw new AuthenticationServiceException("sign in with the operator token");
		};
	}

}
