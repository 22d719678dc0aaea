package boughwright.guard;

import boughwright.people.Person;
import boughwright.people.SignedIn;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.List;
import java.util.Optional;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpRequestResponseHolder;
import org.springframework.security.web.context.SecurityContextRepository;

/** Tells Spring Security who has signed in on a screen. The screens sign in and out; nothing is kept here. */
final class SessionSignIn implements SecurityContextRepository {

    @Override
    @Deprecated
    public SecurityContext loadContext(HttpRequestResponseHolder holder) {
        return context(holder.getRequest());
    }

    private static SecurityContext context(HttpServletRequest request) {
        SecurityContext context = SecurityContextHolder.getContextHolderStrategy().createEmptyContext();
        person(request).ifPresent(person -> context.setAuthentication(
                UsernamePasswordAuthenticationToken.authenticated(person, null, List.of(new SimpleGrantedAuthority("ROLE_" + person.role().name())))));
        return context;
    }

    private static Optional<Person> person(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        return session == null ? Optional.empty() : Optional.ofNullable((SignedIn) session.getAttribute(SignedIn.ATTRIBUTE)).flatMap(SignedIn::person);
    }

    @Override
    public boolean containsContext(HttpServletRequest request) {
        return person(request).isPresent();
    }

    @Override
    public void saveContext(SecurityContext context, HttpServletRequest request, HttpServletResponse response) {
        // Only a screen's door signs anybody in.
    }
}
