package setwright.core.car.worked;

import java.util.function.DoubleBinaryOperator;

/** Works out an arithmetic expression as a reader with a pocket calculator would: {@code + - * / ^ ( )}, pi and functions. */
final class Expression {
    private final String text;
    private int at;

    private Expression(String text) {
        this.text = text.replace(" ", "");
    }

    /** Returns its value. */
    static double value(String text) {
        Expression expression = new Expression(text);
        double value = expression.sum();
        if (expression.at != expression.text.length()) {
            throw new IllegalArgumentException("cannot read '" + text + "' from character " + expression.at);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            DoubleBinaryOperator apply = text.charAt(at++) == '+' ? Double::sum : (a, b) -> a - b;
            value = apply.applyAsDouble(value, product());
        }
        return value;
    }

    private double product() {
        double value = power();
        while (at < text.length() && "*/".indexOf(text.charAt(at)) >= 0) {
            DoubleBinaryOperator apply = text.charAt(at++) == '*' ? (a, b) -> a * b : (a, b) -> a / b;
            value = apply.applyAsDouble(value, power());
        }
        return value;
    }

    private double power() {
        double base = atom();
        if (at < text.length() && text.charAt(at) == '^') {
            at++;
            return Math.pow(base, power());
        }
        return base;
    }

    private double atom() {
        if (text.charAt(at) == '-') {
            at++;
            return -power();
        }
        if (text.charAt(at) == '(') {
            at++;
            double value = sum();
            at++;
            return value;
        }
        int start = at;
        if (Character.isLetter(text.charAt(at))) {
            while (at < text.length() && Character.isLetter(text.charAt(at))) {
                at++;
            }
            return word(text.substring(start, at));
        }
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(start, at));
    }

    private double word(String name) {
        return switch (name) {
            case "pi" -> Math.PI;
            case "sqrt" -> Math.sqrt(atom());
            case "exp" -> Math.exp(atom());
            case "floor" -> Math.floor(atom());
            case "ceil" -> Math.ceil(atom());
            default -> throw new IllegalArgumentException("unknown word " + name);
        };
    }
}
