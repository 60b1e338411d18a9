package org.leafward.pages.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.autoconfigure.WebMvcRegistrations;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.PathContainer.PathSegment;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

/**
 * Looks at the first segment of an address before anything else. The framework tries the
 * methods and patterns of all our addresses, several hundred, for each request whose
 * address has a variable, which took more than a quarter of the time of a poll.
 */
@Configuration(proxyBeanMethods = false)
class FirstSegments implements WebMvcRegistrations {

	@Override
	public RequestMappingHandlerMapping getRequestMappingHandlerMapping() {
		return new Mapping();
	}

	/**
	 * Tries what begins like the address; all that is not clear then is up to the
	 * framework.
	 */
	static final class Mapping extends RequestMappingHandlerMapping {

		/** By the first segment of an address, also what may begin anyhow. */
		private volatile Map<String, List<Candidate>> candidates = Map.of();

		/** An address of ours and who answers. */
		private record Candidate(RequestMappingInfo info, HandlerMethod handler) {
		}

		@Override
		public void afterPropertiesSet() {
			super.afterPropertiesSet();
			Map<String, List<Candidate>> found = new HashMap<>();
			List<Candidate> anyhow = new ArrayList<>();
			getHandlerMethods().forEach((info, handler) -> {
				String segment = firstOf(info.getPatternValues());
				Candidate candidate = new Candidate(info, handler);
				if (segment != null) {
					found.computeIfAbsent(segment, (key) -> new ArrayList<>()).add(candidate);
				}
				else {
					anyhow.add(candidate);
				}
			});
			found.values().forEach((list) -> list.addAll(anyhow));
			this.candidates = found;
		}

		/**
		 * Where one of the candidates matches and no other does, it is the one that the
		 * framework would find. All else is left to it.
		 */
		@Override
		protected @Nullable HandlerMethod lookupHandlerMethod(String path, HttpServletRequest request)
				throws Exception {
			String first = firstOf(request);
			HandlerMethod only = null;
			RequestMappingInfo matching = null;
			for (Candidate candidate : (first != null) ? this.candidates.getOrDefault(first, List.of())
					: List.<Candidate>of()) {
				RequestMappingInfo match = getMatchingMapping(candidate.info(), request);
				if (match != null && only != null) {
					return super.lookupHandlerMethod(path, request);
				}
				if (match != null) {
					only = candidate.handler();
					matching = match;
				}
			}
			if (only == null || matching == null) {
				return super.lookupHandlerMethod(path, request);
			}
			request.setAttribute(BEST_MATCHING_HANDLER_ATTRIBUTE, only);
			handleMatch(matching, path, request);
			return only;
		}

		/** Null where patterns differ or begin with a variable or a sign. */
		static @Nullable String firstOf(Set<String> patterns) {
			String first = null;
			for (String pattern : patterns) {
				String[] segments = pattern.split("/", 3);
				if (segments.length < 2 || !segments[1].matches("[a-z0-9-]+")
						|| first != null && !first.equals(segments[1])) {
					return null;
				}
				first = segments[1];
			}
			return first;
		}

		private static @Nullable String firstOf(HttpServletRequest request) {
			PathContainer path = ServletRequestPathUtils.getParsedRequestPath(request).pathWithinApplication();
			return (path.elements().size() > 1 && path.elements().get(1) instanceof PathSegment segment)
					? segment.valueToMatch() : null;
		}

	}

}
