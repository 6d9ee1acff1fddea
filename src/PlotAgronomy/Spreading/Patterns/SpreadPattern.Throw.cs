using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>How far a grain flies when it leaves a spinner level.</content>
/// <remarks>Quadratic drag: dv/dt = -g |v| v / vt^2 - g, vt the terminal velocity of the grain, g standard gravity;
/// integrated by the classic fourth-order rule. Wind, bouncing and the spin of the grain are not considered: use it to see
/// how unlike two seeds fly, and a row of trays for the swath.</remarks>
public sealed partial class SpreadPattern
{
    private const double LongestStep = 1e-3;

    /// <summary>Distance until the ground.</summary>
    /// <param name="launch">Speed at which the grain leaves, level; above 0, at most 100 m/s.</param>
    /// <param name="terminalVelocity">Terminal velocity of the grain in air; at least 0.5 m/s. Sugar beet seed 5.6 to 6.6 m/s
    /// (SPREAD-S59).</param>
    /// <param name="height">Height of the spinner; above 0, at most 100 m.</param>
    /// <returns>The distance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Length ThrowDistance(Speed launch, Speed terminalVelocity, Length height)
    {
        double start = launch.MetersPerSecond;
        double terminal = terminalVelocity.MetersPerSecond;
        double meters = height.Meters;
        return Length.FromMeters(
            Meters(
                Guard.AboveUpTo(start, 0, SpreadingConstants.All["throw-launch-high"], "m/s", nameof(launch)),
                Guard.AtLeast(terminal, SpreadingConstants.All["throw-terminal-low"], "m/s", nameof(terminalVelocity)),
                Guard.AboveUpTo(meters, 0, SpreadingConstants.All["throw-height-high"], "m", nameof(height))
            )
        );
    }

    private static double Meters(double start, double terminal, double height)
    {
        double gravity = SpreadingConstants.All["standard-gravity"];
        double drag = gravity / (terminal * terminal);
        double seconds = Math.Min(LongestStep, 0.5 / (drag * Math.Max(start, terminal)));
        var (x, y, vx, vy) = (0.0, height, start, 0.0);
        while (true)
        {
            var (x0, y0) = (x, y);
            var (ax1, ay1) = Acceleration(vx, vy, drag, gravity);
            var (ax2, ay2) = Acceleration(vx + (ax1 * seconds / 2), vy + (ay1 * seconds / 2), drag, gravity);
            var (ax3, ay3) = Acceleration(vx + (ax2 * seconds / 2), vy + (ay2 * seconds / 2), drag, gravity);
            var (ax4, ay4) = Acceleration(vx + (ax3 * seconds), vy + (ay3 * seconds), drag, gravity);
            x += (vx * seconds) + ((ax1 + ax2 + ax3) * seconds * seconds / 6);
            y += (vy * seconds) + ((ay1 + ay2 + ay3) * seconds * seconds / 6);
            vx += (ax1 + (2 * ax2) + (2 * ax3) + ax4) * seconds / 6;
            vy += (ay1 + (2 * ay2) + (2 * ay3) + ay4) * seconds / 6;
            if (y <= 0)
            {
                return Interpolation.Line(y0, x0, y, x, 0);
            }
        }
    }

    private static (double Level, double Up) Acceleration(double vx, double vy, double drag, double gravity)
    {
        double speed = Math.Sqrt((vx * vx) + (vy * vy));
        return (-drag * speed * vx, (-drag * speed * vy) - gravity);
    }
}
