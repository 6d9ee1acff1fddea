using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>What passes in one direction come to.</summary>
/// <param name="AlongDegrees">Direction in degrees counter-clockwise from east.</param>
/// <param name="IsAlongSide">Whether it runs along a side of the plot.</param>
/// <param name="Passes">Number of passes.</param>
/// <param name="SpacingFeet">Evened spacing.</param>
/// <param name="LengthFeet">Length of all passes.</param>
internal sealed record PassDirection(
    double AlongDegrees,
    bool IsAlongSide,
    int Passes,
    double SpacingFeet,
    double LengthFeet
)
{
    /// <summary>The ground the passes throw seed on: what they cost.</summary>
    internal double ThrownSquareFeet => SpreaderMath.ThrownSquareFeet(LengthFeet, SpacingFeet);

    internal Bearing Bearing => Bearing.FromDegrees((450 - AlongDegrees) % 360);

    /// <summary>Degrees between two directions that may be driven either way.</summary>
    internal double DegreesFrom(PassDirection other)
    {
        double degrees = Math.Abs(AlongDegrees - other.AlongDegrees) % 180;
        return Math.Min(degrees, 180 - degrees);
    }
}
