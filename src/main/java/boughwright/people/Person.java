package boughwright.people;

/**
 * Who acts. No two people of a shop have the same name.
 *
 * @param name 1 to 60 characters
 */
public record Person(String name, Role role) {
}
