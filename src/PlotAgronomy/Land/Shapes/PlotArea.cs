using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>How much ground a plot has, how that was found and how sure it is.</summary>
/// <example>
/// <code>
/// var area = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140));
/// Console.WriteLine(Amounts.Print(area.Area, "ac", 3));
/// // 0.585 ac
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class PlotArea : IWorkedResult
{
    internal PlotArea() { }

    /// <summary>Gets the area to plan with: the ground's own, slope included.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets how it was found.</summary>
    internal AreaMethod Method { get; init; }

    /// <summary>Gets one standard deviation as a part of the area, from the errors that were
    /// stated; null when none was. A pure number.</summary>
    public double? RelativeError { get; init; }

    /// <summary>Gets the area less one standard deviation, never below 0; null when no error is known.</summary>
    public Area? Low => RelativeError is { } error ? Area.FromAcres(LandMath.LowArea(Area.Acres, error)) : null;

    /// <summary>Gets the area plus one standard deviation, or null.</summary>
    public Area? High => RelativeError is { } error ? Area.FromAcres(LandMath.HighArea(Area.Acres, error)) : null;

    /// <summary>Gets the side of a square of this area.</summary>
    public Length SquareSide => Length.FromFeet(Math.Sqrt(Area.SquareFeet));

    /// <summary>Gets the outline, where the measurements fix one; else null. Passes can be laid over an outline only.</summary>
    public PlotOutline? Outline { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks().Concat(SizeRemarks()));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        Method switch
        {
            AreaMethod.Sides => [Source.UnitDefinitions],
            AreaMethod.Paces => [Source.UnitDefinitions, .. LandFormulas.All["step-length"].Origin!.Sources],
            AreaMethod.GeographicOutline => LandConstants.All.Find("plane-high-acres").Origin.Sources,
            _ => [],
        };

    /// <summary>The sides it was made of, in the order of their form; null when it was made otherwise.</summary>
    internal (PlotForm Form, ImmutableArray<MeasuredLength> Lengths)? Sides { get; private init; }

    /// <summary>The pieces it was put together from; none when it is one.</summary>
    internal ImmutableArray<(bool IsAdded, PlotArea Piece)> Pieces { get; private init; } = [];

    /// <summary>Whether it follows from lengths that are kept: its own sides or those of its pieces.</summary>
    internal bool IsPutTogether => Sides is not null || !Pieces.IsEmpty;

    /// <summary>Every length that was measured, those of pieces too.</summary>
    internal IEnumerable<MeasuredLength> Measured => (Sides?.Lengths ?? []).Concat(Pieces.SelectMany(p => p.Piece.Measured));

    /// <summary>What changes the area by how much a foot.</summary>
    private IReadOnlyList<(MeasuredLength Side, double Change)> Changes { get; init; } = [];

    /// <summary>Whether it was corrected, compared or given an error after it was measured.</summary>
    internal bool IsAltered { get; private init; }

    /// <summary>The remarks in any order, made when asked for.</summary>
    internal Func<IEnumerable<Finding>> Remarks { get; init; } = () => [];

    /// <summary>The lines of the sum without those of each paced side.</summary>
    internal Func<IEnumerable<WorkedLine>> ShapeLines { get; init; } = () => [];

    /// <summary>The lines of the sum, without its likely range.</summary>
    internal Func<IEnumerable<WorkedLine>> Lines { get; init; } = () => [];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        RelativeError is not { } error
            ? [.. Lines()]
            : [.. Lines(), Likely("area-low", Low!.Value, error), Likely("area-high", High!.Value, error)];

    /// <summary>The same plot on a slope: an area taken from a map or fixes grows to the ground's own.</summary>
    /// <param name="slope">Mean slope of the plot.</param>
    /// <returns>The corrected area; sides measured on the ground already follow the slope and stay as they are.</returns>
    /// <remarks>ground area = map area / cos(slope). A steep slope adds a caution about machines.</remarks>
    public PlotArea OnSlope(Slope slope)
    {
        bool fromMap = Method is AreaMethod.MapOutline or AreaMethod.GeographicOutline or AreaMethod.Stated;
        var ground = fromMap ? Area.FromAcres(LandMath.GroundArea(Area.Acres, slope.RisePerRun)) : Area;
        return new PlotArea
        {
            Area = ground,
            Method = Method,
            RelativeError = RelativeError,
            Outline = Outline,
            Sides = Sides,
            Pieces = Pieces,
            Changes = Changes,
            IsAltered = true,
            Remarks = () => Remarks().Concat(SlopeRemarks(slope, fromMap)),
            Lines = fromMap ? () => Lines().Append(OnSlopeLine(slope, ground)) : Lines,
        };
    }

    /// <summary>How much too much, or too little, everything would be that is bought by a guess of the area.</summary>
    /// <param name="guess">The guess; above 0.</param>
    /// <returns>guess / measured - 1, a pure number: 0.5 means half as much again.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guess is 0, negative, NaN or infinite.</exception>
    public double ExcessOf(Area guess)
    {
        double acres = guess.Acres;
        return Guard.Above(acres, 0, "ac", nameof(guess)) / Area.Acres - 1;
    }

    /// <summary>The same area with a finding that says how far a guess is off.</summary>
    /// <param name="guess">The guess; above 0.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guess is 0, negative, NaN or infinite.</exception>
    public PlotArea ComparedWith(Area guess)
    {
        double excess = ExcessOf(guess);
        return Copy(() => Remarks().Append(GuessOff(guess, excess)), RelativeError);
    }

    /// <summary>The same area with an error stated by the person who measured it.</summary>
    /// <param name="relativeError">One standard deviation as a part of the area; from 0 to 1, a pure number.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    internal PlotArea WithRelativeError(double relativeError) =>
        Copy(Remarks, Guard.Between(relativeError, 0, 1, "(a part of the area)"));

    /// <summary>The same plot, were it of another size.</summary>
    internal PlotArea Scaled(Area area) =>
        new()
        {
            Area = area,
            Method = Method,
            RelativeError = RelativeError,
            Outline = Outline,
            Sides = Sides,
            IsAltered = true,
            Remarks = Remarks,
            Lines = Lines,
        };

    private WorkedLine Likely(string id, Area end, double error) =>
        LandFormulas
            .All[id]
            .Line(
                Amounts.Print(end, decimals: 3),
                ("area", Amounts.Print(Area, decimals: 3)),
                ("error", Amounts.Print(error, 3))
            );

    /// <summary>However the area was found, one larger than any food plot is asked about.</summary>
    private IEnumerable<Finding> SizeRemarks()
    {
        double acres = Area.Acres,
            limit = LandConstants.All["plausible-area-high"];
        if (acres > limit)
        {
            yield return FindingCatalog.Create(
                LandCodes.AreaLarge,
                ("area", Amounts.Print(Area, decimals: 1)),
                ("limit", Amounts.Print(Area.FromAcres(limit)))
            );
        }
    }

    private static IEnumerable<Finding> SlopeRemarks(Slope slope, bool fromMap)
    {
        if (slope.Percent >= LandConstants.All["steep-percent"])
        {
            yield return FindingCatalog.Create(LandCodes.Steep, ("slope", slope.ToString()));
        }

        if (slope.RisePerRun > 0)
        {
            yield return fromMap
                ? FindingCatalog.Create(
                    LandCodes.SlopeCorrected,
                    ("percent", $"{Amounts.Print(100 * (slope.GroundPerMap - 1), 2)} %"),
                    ("slope", slope.ToString())
                )
                : FindingCatalog.Create(LandCodes.SlopeFollowed, ("slope", slope.ToString()));
        }
    }

    private WorkedLine OnSlopeLine(Slope slope, Area ground) =>
        LandFormulas
            .All["area-on-slope"]
            .Line(
                Amounts.Print(ground, decimals: 4),
                ("map area", Amounts.Print(Area, decimals: 4)),
                ("slope in percent", Amounts.Print(slope.Percent, 2))
            );

    private Finding GuessOff(Area guess, double excess) =>
        FindingCatalog.Create(
            LandCodes.GuessOff,
            ("guess", Amounts.Print(guess, decimals: 3)),
            ("percent", $"{Amounts.Print(100 * Math.Abs(excess), 1)} %"),
            ("direction", excess < 0 ? "below" : "above"),
            ("measured", Amounts.Print(Area, decimals: 3))
        );

    private PlotArea Copy(Func<IEnumerable<Finding>> remarks, double? relativeError) =>
        new()
        {
            Area = Area,
            Method = Method,
            RelativeError = relativeError,
            Outline = Outline,
            Sides = Sides,
            Pieces = Pieces,
            Changes = Changes,
            IsAltered = true,
            Remarks = remarks,
            Lines = Lines,
        };

    /// <summary>What it comes to: the last line of its working, or the area with its likely range.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Low is { } low && High is { } high
            ? $"Area: {Amounts.Print(Area, decimals: 3)}, "
                + $"likely {Amounts.Print(low, decimals: 3)} to {Amounts.Print(high, decimals: 3)}"
            : this.InWords();
}
