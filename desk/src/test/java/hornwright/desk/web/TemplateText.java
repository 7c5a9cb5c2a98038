package hornwright.desk.web;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a template as a person's eye does: what of it would be shown as it stands, rather than said by a key. */
final class TemplateText {
    private static final Pattern LETTER = Pattern.compile("\\p{L}");
    private static final Pattern CALL = Pattern.compile("@(if|elseif|for|template\\.[\\w.-]+)\\(");
    private static final Pattern WORD = Pattern.compile("@(else|endif|endfor)");
    private static final Pattern HEAD = Pattern.compile("(?m)^@(import|param)[^\\n]*\\n");
    private static final Pattern SHOWN =
            Pattern.compile("(?<=\\s)(aria-label|placeholder|title|alt|data-label)=\"((?:\\$\\{[^}]*}|[^\"$])*)\"");
    private static final Pattern TOLD = Pattern.compile("(?:^|[?:])\\s*\"([^\"]*)\"");
    private static final Pattern GIVEN =
            Pattern.compile("\\b(label|button|title|heading|head|was|will|side|none)\\s*=\\s*\"([^\"]*)\"");
    private static final Pattern INPUT = Pattern.compile("@if\\([^\\n]*?\\)|@(else|endif)");

    private final String text;
    private final List<String> bare = new ArrayList<>();
    private int at;

    private TemplateText(String text) {
        this.text = text;
    }

    /** Texts that are shown without a key. */
    static List<String> bare(String template) {
        TemplateText reader = new TemplateText(HEAD.matcher(template).replaceAll(""));
        reader.read();
        return List.copyOf(reader.bare);
    }

    private void read() {
        StringBuilder shown = new StringBuilder();
        while (at < text.length()) {
            Matcher call = from(CALL);
            Matcher word = from(WORD);
            if (text.startsWith("<%--", at)) {
                at = text.indexOf("--%>", at) + 4;
            } else if (text.startsWith("${", at)) {
                told(inside(at + 1));
            } else if (text.startsWith("!{", at) || text.startsWith("$unsafe{", at)) {
                inside(text.indexOf('{', at));
            } else if (call.lookingAt()) {
                called(call.group(1), inside(call.end() - 1));
            } else if (word.lookingAt()) {
                at = word.end();
            } else if (text.charAt(at) == '<') {
                keep(shown);
                tag();
            } else {
                shown.append(text.charAt(at++));
                continue;
            }
            keep(shown);
        }
        keep(shown);
    }

    private Matcher from(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }

    private void keep(StringBuilder shown) {
        String plain = shown.toString().replaceAll("&\\w+;", "");
        if (LETTER.matcher(plain).find()) {
            bare.add(plain.strip());
        }
        shown.setLength(0);
    }

    /** A tag may hold expressions and branches; of its attributes some are shown or read aloud. */
    private void tag() {
        int from = at;
        while (text.charAt(at) != '>') {
            if (text.startsWith("${", at)) {
                inside(at + 1);
            } else if (from(CALL).lookingAt()) {
                inside(text.indexOf('(', at));
            } else {
                at++;
            }
        }
        at++;
        Matcher attribute = SHOWN.matcher(text.substring(from, at));
        while (attribute.find()) {
            String value = attribute.group(2).replaceAll("\\$\\{[^}]*}", "");
            if (LETTER.matcher(INPUT.matcher(value).replaceAll("")).find()) {
                bare.add(attribute.group());
            }
        }
    }

    private void told(String expression) {
        TOLD.matcher(expression)
                .results()
                .map(one -> one.group(1))
                .filter(one -> LETTER.matcher(one).find())
                .forEach(bare::add);
    }

    private void called(String name, String arguments) {
        if (!name.startsWith("template")) {
            return;
        }
        int content = arguments.indexOf("@`");
        String given = content < 0 ? arguments : arguments.substring(0, content);
        GIVEN.matcher(given)
                .results()
                .filter(one -> LETTER.matcher(one.group(2)).find())
                .forEach(one -> bare.add(one.group()));
        if (content >= 0) {
            bare.addAll(bare(arguments.substring(content + 2, arguments.lastIndexOf('`'))));
        }
    }

    /** What stands between the bracket at {@code open} and its like; afterwards reading goes on behind it. */
    private String inside(int open) {
        char opens = text.charAt(open);
        char closes = opens == '(' ? ')' : '}';
        int depth = 0;
        boolean quoted = false;
        for (int here = open; here < text.length(); here++) {
            char letter = text.charAt(here);
            if (text.startsWith("@`", here) && !quoted) {
                here = content(here + 2);
            } else if (letter == '"' && text.charAt(here - 1) != '\\') {
                quoted = !quoted;
            } else if (!quoted && letter == opens) {
                depth++;
            } else if (!quoted && letter == closes && --depth == 0) {
                at = here + 1;
                return text.substring(open + 1, here);
            }
        }
        throw new IllegalStateException("a bracket is never closed: " + text.substring(open));
    }

    /** Where the content that begins there ends; content may hold content. */
    private int content(int from) {
        for (int here = from; here < text.length(); here++) {
            if (text.startsWith("@`", here)) {
                here = content(here + 2);
            } else if (text.charAt(here) == '`') {
                return here;
            }
        }
        throw new IllegalStateException("a content is never closed");
    }
}
