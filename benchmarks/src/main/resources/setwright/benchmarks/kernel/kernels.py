"""Kernels by SciPy and NumPy, on arrays that are handed over in a file.

kernels.py NAME INPUT OUTPUT SECONDS: writes the result, then prints mean time on the clock and of the processor of a call, s.
Without arguments: prints the versions.
"""

import struct
import sys
import time

import numpy as np
import scipy
from scipy import interpolate, signal, sparse, stats
from scipy.sparse import linalg


def butterworth(x, cutoff_hz, rate_hz):
    sections = signal.butter(4, cutoff_hz[0], fs=rate_hz[0], output="sos")
    return signal.sosfiltfilt(sections, x, padtype="odd", padlen=int(np.ceil(2 * rate_hz[0] / cutoff_hz[0])))


def savitzky_golay(x, half, step_s):
    half = int(half[0])
    return signal.savgol_filter(x, 2 * half + 1, 2, deriv=1, delta=step_s[0])[half:-half]


def spline(u, y, weight, period, knots, roughness):
    count, spacing = int(knots[0]), period[0] / knots[0]
    places = np.arange(-3, count + 4) * spacing
    wide = interpolate.BSpline.design_matrix(u, places, 3)
    turned = sparse.csr_array((wide.data, wide.indices % count, wide.indptr), shape=(len(u), count))
    third = sparse.diags_array([-1.0, 3.0, -3.0, 1.0], offsets=[0, 1, 2, 3], shape=(count, count + 3)).tocsr()
    third = third[:, :count] + sparse.hstack([third[:, count:], sparse.csr_array((count, count - 3))])
    weighted = turned.multiply(weight[:, None]).tocsr()
    matrix = turned.T @ weighted + roughness[0] / spacing**5 * (third.T @ third)
    found = linalg.spsolve(matrix.tocsc(), weighted.T @ y)
    return (found + 4 * np.roll(found, -1) + np.roll(found, -2)) / 6


def quantiles(x, share):
    return np.array([np.median(x), stats.median_abs_deviation(x), np.quantile(x, share[0])])


def huber(y, *predictors):
    rows = np.column_stack(predictors)
    weights, scale = np.ones_like(y), 0.0
    found = np.linalg.lstsq(rows, y, rcond=None)[0]
    for _ in range(100):
        size = np.abs(y - rows @ found)
        now = 1.4826 * np.median(size)
        if abs(now - scale) < 1e-9 * now:
            break
        scale = now
        weights = np.minimum(1.0, 1.345 * scale / np.maximum(size, 1e-300))
        root = np.sqrt(weights)
        found = np.linalg.lstsq(rows * root[:, None], y * root, rcond=None)[0]
    return found


def pair_slopes(x, y):
    return np.array([stats.theilslopes(y, x).slope])


def correlation(first, second, most):
    most, count = int(most[0]), len(first)
    a, b = first - first.mean(), second - second.mean()
    products = signal.correlate(b, a, method="fft")[count - 1 - most : count + most]
    shift = np.arange(-most, most + 1)
    start, end = np.maximum(0, -shift), np.minimum(count, count - shift)

    def sums(x, by):
        whole, square = np.concatenate([[0], np.cumsum(x)]), np.concatenate([[0], np.cumsum(x * x)])
        return whole[end + by] - whole[start + by], square[end + by] - square[start + by]

    sum_a, square_a = sums(a, 0)
    sum_b, square_b = sums(b, shift)
    n = end - start
    return (products - sum_a * sum_b / n) / np.sqrt((square_a - sum_a**2 / n) * (square_b - sum_b**2 / n))


def resampling(times, values, rate_hz, count):
    return np.interp(np.arange(int(count[0])) / rate_hz[0], times, values)


def monotone(x, y, places):
    return interpolate.PchipInterpolator(x, y)(places)


def arrays(path):
    with open(path, "rb") as file:
        for _ in range(struct.unpack("<i", file.read(4))[0]):
            yield np.frombuffer(file.read(8 * struct.unpack("<i", file.read(4))[0]), "<f8")


def main():
    if len(sys.argv) == 1:
        print(f"SciPy {scipy.__version__}, NumPy {np.__version__}, Python {sys.version.split()[0]}")
        return
    name, source, target, seconds = sys.argv[1:]
    inputs = list(arrays(source))
    kernel = globals()[name]
    kernel(*inputs).astype("<f8").tofile(target)
    calls, begun, used = 0, time.perf_counter(), time.process_time()
    while calls < 3 or time.perf_counter() - begun < float(seconds):
        kernel(*inputs)
        calls += 1
    print((time.perf_counter() - begun) / calls, (time.process_time() - used) / calls)


main()
