using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What one pass throws across its path, seen looking forward: left offsets are negative.</summary>
/// <remarks>A measured pattern is known at its trays, straight lines between them and nothing beyond the outer ones. Amounts are
/// pure numbers in whatever unit the trays were weighed: only their proportions matter.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SpreadPattern
{
    private readonly Func<double, double>? shape;
    private readonly ImmutableArray<double> catches;

    private SpreadPattern(ImmutableArray<double> catches, double firstFeet, double spacingFeet)
    {
        this.catches = catches;
        LeftFeet = firstFeet;
        SpacingFeet = spacingFeet;
        RightFeet = firstFeet + ((catches.Length - 1) * spacingFeet);
    }

    private SpreadPattern(Func<double, double> shape, double leftFeet, double rightFeet)
    {
        this.shape = shape;
        catches = [];
        LeftFeet = leftFeet;
        RightFeet = rightFeet;
    }

    /// <summary>Gets the catches from left to right; empty for a pattern given by a formula.</summary>
    public ImmutableArray<double> Catches => catches;

    /// <summary>Gets the offset of the outermost left tray or edge; negative when it lies left of the path.</summary>
    internal double LeftFeet { get; }

    /// <summary>Gets the offset of the outermost right tray or edge.</summary>
    internal double RightFeet { get; }

    internal double SpacingFeet { get; }

    internal bool IsMeasured => shape is null;

    /// <summary>Creates a pattern from a row of trays.</summary>
    /// <param name="catches">Catches from left to right, at least three, each at least 0, not all 0; pure numbers in one
    /// unit.</param>
    /// <param name="spacing">Distance between tray centres; from 0.05 to 100 ft.</param>
    /// <param name="firstOffset">Offset of the leftmost tray, at most 10,000 ft; null when the row is centred on the
    /// path.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentException">Fewer than three trays, more than 2,000, or nothing caught.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern FromTrays(IReadOnlyList<double> catches, Length spacing, Length? firstOffset = null)
    {
        double feet = spacing.Feet;
        Guard.Between(
            feet,
            SpreadingConstants.All["tray-spacing-low"],
            SpreadingConstants.All["tray-spacing-high"],
            "ft",
            nameof(spacing)
        );
        foreach (double caught in Guard.NotEmpty(catches))
        {
            Guard.Between(caught, 0, SpreadingConstants.All["catch-high"], "(a catch)", nameof(catches));
        }

        double most = SpreadingConstants.All["most-trays"];
        if (catches.Count > most)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"A pattern has at most {most} trays; this one has {catches.Count}."),
                nameof(catches)
            );
        }

        if (catches.Count < 3 || catches.All(c => c == 0))
        {
            throw new ArgumentException("A pattern needs at least three trays, and something caught.", nameof(catches));
        }

        double first = firstOffset is { } given ? given.Feet : -(catches.Count - 1) / 2.0 * feet;
        double reach = SpreadingConstants.All["swath-high"];
        return new SpreadPattern([.. catches], Guard.Between(first, -reach, reach, "ft", nameof(firstOffset)), feet);
    }

    /// <summary>The same pattern with left and right exchanged.</summary>
    /// <returns>The mirrored pattern.</returns>
    internal SpreadPattern Mirrored() =>
        shape is { } formula
            ? new SpreadPattern(x => formula(-x), -RightFeet, -LeftFeet)
            : new SpreadPattern([.. catches.Reverse()], -RightFeet, SpacingFeet);

    /// <summary>Amount at an offset from the path, in feet; zero outside the edges.</summary>
    internal double AmountAt(double feet)
    {
        if (shape is { } formula)
        {
            return feet < LeftFeet || feet > RightFeet ? 0 : formula(feet);
        }

        double place = (feet - LeftFeet) / SpacingFeet;
        double nearest = Math.Round(place, MidpointRounding.AwayFromZero);
        if (Math.Abs(place - nearest) < Tolerance.Dust)
        {
            return nearest < 0 || nearest > catches.Length - 1 ? 0 : catches[(int)nearest];
        }

        if (place < 0 || place > catches.Length - 1)
        {
            return 0;
        }

        int left = (int)Math.Floor(place);
        return Interpolation.Line(left, catches[left], left + 1, catches[left + 1], place);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        IsMeasured ? $"{Amounts.Print(Catches.Length, 0)} trays" : $"a pattern {Amounts.Print(RightFeet - LeftFeet, 1)} ft wide";
}
