package hornwright.bench.horn;

/**
 * A closed choice that is written as one word in files and read aloud on the page.
 */
public interface Word {
    String word();
}
