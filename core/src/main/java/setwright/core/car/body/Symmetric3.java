package setwright.core.car.body;

/** Solves three equations with a symmetric positive definite matrix; a library's general solver would allocate in each step. */
final class Symmetric3 {
    private Symmetric3() {}

    /**
     * Solves in place.
     *
     * @param m  entries xx, xy, xz, yy, yz, zz
     * @param b  right-hand side; receives the solution
     */
    static void solve(double[] m, double[] b) {
        double first = 1.0 / m[0];
        double l21 = m[1] * first;
        double l31 = m[2] * first;
        double second = 1.0 / (m[3] - l21 * m[1]);
        double rest = m[4] - l31 * m[1];
        double l32 = rest * second;
        double y2 = b[1] - l21 * b[0];
        double y3 = b[2] - l31 * b[0] - l32 * y2;
        b[2] = y3 / (m[5] - l31 * m[2] - l32 * rest);
        b[1] = y2 * second - l32 * b[2];
        b[0] = b[0] * first - l21 * b[1] - l31 * b[2];
    }
}
