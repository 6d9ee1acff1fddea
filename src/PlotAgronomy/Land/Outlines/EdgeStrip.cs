using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>A plot divided into an unsown strip along its edge and what is left inside.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class EdgeStrip : IWorkedResult
{
    private readonly PlotOutline whole;
    private readonly double insideSquareFeet;

    internal EdgeStrip(PlotOutline whole, double stripFeet, ImmutableArray<PlotOutline> parts)
    {
        this.whole = whole;
        Width = Length.FromFeet(stripFeet);
        Parts = parts;
        insideSquareFeet = parts.Sum(p => p.SquareFeet);
    }

    /// <summary>Gets the width of the strip.</summary>
    public Length Width { get; }

    /// <summary>Gets the outlines of what is left; empty when the strip takes everything.</summary>
    public ImmutableArray<PlotOutline> Parts { get; }

    /// <summary>Gets the area left inside.</summary>
    public Area Inside => Area.FromSquareFeet(insideSquareFeet);

    /// <summary>Gets the area of the strip.</summary>
    public Area Strip => Area.FromSquareFeet(LandMath.StripSquareFeet(whole.SquareFeet, insideSquareFeet));

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Parts.Length switch
        {
            0 => [FindingCatalog.Create(LandCodes.StripTakesAll, ("strip", Amounts.Print(Width, decimals: 1)))],
            1 => [],
            _ =>
            [
                FindingCatalog.Create(
                    LandCodes.StripSplits,
                    ("strip", Amounts.Print(Width, decimals: 1)),
                    ("count", Parts.Length.ToString(CultureInfo.InvariantCulture))
                ),
            ],
        };

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources { get; } = [];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            LandFormulas
                .All["unsown-strip"]
                .Line(
                    $"{Amounts.Print(Strip, "ft2", 0)}, {Amounts.Print(Inside, decimals: 4)} left inside",
                    ("plot", Amounts.Print(whole.Area, "ft2", 0)),
                    ("inside", Amounts.Print(Inside, "ft2", 0))
                ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
