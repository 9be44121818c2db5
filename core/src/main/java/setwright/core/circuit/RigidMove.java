package setwright.core.circuit;

/**
 * A rotation followed by a shift in the plane.
 *
 * @param cosine  of the angle turned to the left
 * @param sine    of the angle turned to the left
 * @param shiftX  m
 * @param shiftY  m
 */
record RigidMove(double cosine, double sine, double shiftX, double shiftY) {
    static RigidMove none() {
        return new RigidMove(1.0, 0.0, 0.0, 0.0);
    }

    static RigidMove of(double angleRad, double shiftX, double shiftY) {
        return new RigidMove(Math.cos(angleRad), Math.sin(angleRad), shiftX, shiftY);
    }

    /**
     * Returns the move that brings one set of points nearest to another in the least-squares sense (the plane case of
     * W. Kabsch, Acta Crystallographica A32, 1976).
     */
    static RigidMove fit(double[] fromX, double[] fromY, double[] toX, double[] toY) {
        int n = fromX.length;
        double[] mean = new double[4];
        for (int i = 0; i < n; i++) {
            mean[0] += fromX[i] / n;
            mean[1] += fromY[i] / n;
            mean[2] += toX[i] / n;
            mean[3] += toY[i] / n;
        }
        double dot = 0.0;
        double cross = 0.0;
        for (int i = 0; i < n; i++) {
            double ax = fromX[i] - mean[0];
            double ay = fromY[i] - mean[1];
            double bx = toX[i] - mean[2];
            double by = toY[i] - mean[3];
            dot += ax * bx + ay * by;
            cross += ax * by - ay * bx;
        }
        double angle = Math.atan2(cross, dot);
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        return new RigidMove(
                cosine, sine, mean[2] - cosine * mean[0] + sine * mean[1], mean[3] - sine * mean[0] - cosine * mean[1]);
    }

    double x(double px, double py) {
        return cosine * px - sine * py + shiftX;
    }

    double y(double px, double py) {
        return sine * px + cosine * py + shiftY;
    }
}
