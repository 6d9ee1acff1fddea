using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A laboratory's printed rate with a method's own sum beside it. The printed rate is the one to follow.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PrintedLimeCheck : IWorkedResult
{
    private PrintedLimeCheck(LimeRate printed, LimeNeed need, LimingMaterial through)
    {
        Through = through;
        Printed = printed;
        Need = need;
    }

    /// <summary>Gets the printed rate.</summary>
    public LimeRate Printed { get; }

    /// <summary>Gets the method's answer.</summary>
    public LimeNeed Need { get; }

    /// <summary>Gets the material gone through when the limes are rated in different indices.</summary>
    public LimingMaterial Through { get; }

    /// <summary>Gets the method's rate in the lime and for the depth of the printed one; null when the method does not answer,
    /// aims at another pH, or the limes cannot be compared.</summary>
    public ApplicationRate? Computed { get; private init; }

    /// <summary>Gets a value indicating whether the two differ by more than the reading error explains; null when they cannot be
    /// compared.</summary>
    public bool? Differs { get; private init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsInTurn());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Printed.Basis.Origin.Sources.Union(Need.Sources)];

    /// <summary>Lays a method's answer beside a printed rate.</summary>
    /// <param name="printed">Printed rate.</param>
    /// <param name="need">Answer of a method for the same soil.</param>
    /// <param name="through">Material to go through when the limes are rated in different indices; null takes pure carbonate
    /// powder.</param>
    /// <returns>The check.</returns>
    public static PrintedLimeCheck For(LimeRate printed, LimeNeed need, LimingMaterial? through = null)
    {
        ArgumentNullException.ThrowIfNull(printed);
        ArgumentNullException.ThrowIfNull(need);
        var material = through ?? LimingMaterial.PureCarbonate;
        if (need.Rate is not { } rate || !SameTarget(printed, need) || !Comparable(printed, need, material))
        {
            return new(printed, need, material);
        }

        double factor = LimeRate.Factor(rate.Basis, printed.Basis, material);
        double computed = Alike(rate);
        double margin = LimingConstants.All["same-within-share"];
        double low = need.Lowest is { } lowest ? Alike(lowest) : computed * (1 - margin);
        double high = need.Highest is { } highest ? Alike(highest) : computed * (1 + margin);
        return new(printed, need, material)
        {
            Computed = ApplicationRate.FromPoundsPerAcre(computed),
            Differs =
                Tolerance.IsBelow(printed.OfBasis.PoundsPerAcre, low) || Tolerance.IsAbove(printed.OfBasis.PoundsPerAcre, high),
        };

        double Alike(LimeRate one) => LimeSums.InOtherLime(one.AtDepth(printed.Depth).OfBasis.PoundsPerAcre, factor);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            LimingFormulas.All["lime-as-labelled"].Line(Printed.ToString(), ("what", "Printed")).From(Printed.Basis.Origin),
            Computed is { } rate && Need.Rate is { } own
                ? LimingFormulas
                    .All["lime-on-common-basis"]
                    .Line(
                        $"{LimeText.Tons(rate.PoundsPerAcre)} ton/ac of the printed lime and depth",
                        ("method", Need.Method.Name),
                        ("its rate", LimeText.Tons(own.OfBasis.PoundsPerAcre)),
                        ("common depth", LimeText.Inches(Printed.Depth)),
                        ("its depth", LimeText.Inches(own.Depth)),
                        ("common lime for its lime", Amounts.Print(own.ConvertTo(Printed.Basis, Through).Factor, 4))
                    )
                    .From(Need.Method.Origin)
                : LimingFormulas
                    .All["lime-no-rate"]
                    .Line("cannot be compared", ("what", Need.Method.Name))
                    .From(Need.Method.Origin),
        ];

    private IEnumerable<Finding> FindingsInTurn()
    {
        if (Printed.Institution != Need.Method.Institution)
        {
            yield return FindingCatalog.Create(
                LimingCodes.InstitutionMixed,
                ("printed", Printed.Institution.Name),
                ("computed", Need.Method.Institution.Name)
            );
        }

        if (!SameTarget(Printed, Need))
        {
            yield return FindingCatalog.Create(
                LimingCodes.PrintedOtherTarget,
                ("printed", LimeText.Ph(Printed.TargetPh)),
                ("computed", LimeText.Ph(Need.TargetPh))
            );
        }

        if (Differs == true)
        {
            yield return FindingCatalog.Create(
                LimingCodes.PrintedDiffers,
                ("printed", LimeText.Tons(Printed.OfBasis.PoundsPerAcre)),
                ("method", Need.Method.Name),
                ("computed", LimeText.Tons(Computed!.Value.PoundsPerAcre))
            );
        }
    }

    private static bool SameTarget(LimeRate printed, LimeNeed need) => Tolerance.AreEqual(printed.TargetPh, need.TargetPh);

    private static bool Comparable(LimeRate printed, LimeNeed need, LimingMaterial through) =>
        printed.Basis == need.Method.Basis && printed.Basis.Figure is not null
        || (
            printed.Basis.Figure is { } a
            && need.Method.Basis.Figure is { } b
            && (a.Index == b.Index || (through.FindFigure(a.Index) is not null && through.FindFigure(b.Index) is not null))
        );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
