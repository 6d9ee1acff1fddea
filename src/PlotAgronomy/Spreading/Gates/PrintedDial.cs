using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>What a scale printed on a spreader claims, against what is wanted.</summary>
/// <remarks>A printed scale belongs to the one material it was made for: it says nothing about another seed. The result always
/// asks for a weighed run. Charts of drills can miss by 25 to 50 % (SPREAD-S4).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PrintedDial : IWorkedResult
{
    internal PrintedDial() { }

    /// <summary>Gets the rate wanted.</summary>
    public required ApplicationRate Wanted { get; init; }

    /// <summary>Gets the rate the setting claims.</summary>
    public required ApplicationRate Claimed { get; init; }

    /// <summary>Gets claimed over wanted; a pure number.</summary>
    public double ClaimedToWanted => Claimed / Wanted;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [FindingCatalog.Create(SpreadingCodes.NoWeighedRun)];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.All.SourcesOf("spread-dial-claimed-to-wanted");

    /// <summary>Compares a printed setting with the rate wanted.</summary>
    /// <param name="wanted">Rate wanted; above 0.</param>
    /// <param name="claimed">Rate printed at the setting; at least 0.</param>
    /// <returns>The comparison, with a finding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate wanted is zero.</exception>
    public static PrintedDial Compare(ApplicationRate wanted, ApplicationRate claimed)
    {
        Guard.Above(wanted.PoundsPerAcre, 0, "lb/ac", nameof(wanted));
        return new() { Wanted = wanted, Claimed = claimed };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-dial-claimed-to-wanted"]
                .Line(
                    Amounts.Print(ClaimedToWanted, 2),
                    ("claimed rate", Amounts.Print(Claimed.PoundsPerAcre, 1)),
                    ("wanted rate", Amounts.Print(Wanted.PoundsPerAcre, 1))
                ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
