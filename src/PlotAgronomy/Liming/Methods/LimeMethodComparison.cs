using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>One soil through every method that accepts its reading, side by side in one material at one depth.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeMethodComparison : IWorkedResult
{
    private LimeMethodComparison() { }

    /// <summary>Gets the soil.</summary>
    public required PlotSoil Soil { get; init; }

    /// <summary>Gets the pH asked for; each method answers for its own target closest to it.</summary>
    public required double TargetPh { get; init; }

    /// <summary>Gets the common depth.</summary>
    public required Length Depth { get; init; }

    /// <summary>Gets the common material.</summary>
    public required LimingMaterial Material { get; init; }

    /// <summary>Gets the answers, least lime first, those without a common figure last.</summary>
    public required ImmutableArray<LimeMethodAnswer> Answers { get; init; }

    /// <summary>Gets the difference between the largest and the smallest common figure; null when fewer than two methods have
    /// one.</summary>
    public ApplicationRate? Spread => LimeSpread.Of(Answers)?.Difference;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsOf(Answers, Spread));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Answers.SelectMany(a => a.Need.Sources).Distinct().OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>Runs the methods.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="depth">Common depth; above 0, at most 24 inches.</param>
    /// <param name="material">Common material; null takes pure carbonate powder, which takes every index at its word.</param>
    /// <param name="includeFromMemory">Whether to ask the methods whose numbers are from memory as well; each then says
    /// so.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Each rate: x common depth / its depth; x strength of its lime / strength of the material in its own
    /// index.</remarks>
    public static LimeMethodComparison For(
        PlotSoil soil,
        double targetPh,
        Length depth,
        LimingMaterial? material = null,
        bool includeFromMemory = false
    ) => For(soil, targetPh, depth, material, m => includeFromMemory || m.Status != DataStatus.Memory);

    /// <summary>As above, where the caller says which methods are asked.</summary>
    internal static LimeMethodComparison For(
        PlotSoil soil,
        double targetPh,
        Length depth,
        LimingMaterial? material,
        Func<LimeMethod, bool> isAsked
    )
    {
        ArgumentNullException.ThrowIfNull(soil);
        LimeLimits.TargetPh(targetPh, nameof(targetPh));
        double inches = depth.Inches;
        LimeLimits.Depth(inches, nameof(depth));
        var common = material ?? LimingMaterial.PureCarbonate;
        ImmutableArray<LimeMethodAnswer> answers =
        [
            .. LimeMethod
                .Accepting(soil, includeFromMemory: true)
                .Where(isAsked)
                .Select(m => new LimeMethodAnswer(m.NeedFor(soil, m.ClosestTarget(targetPh)), depth, common))
                .OrderBy(a => a.Common?.PoundsPerAcre ?? double.PositiveInfinity)
                .ThenBy(a => a.Method.Id, StringComparer.Ordinal),
        ];
        return new LimeMethodComparison
        {
            Soil = soil,
            TargetPh = targetPh,
            Depth = depth,
            Material = common,
            Answers = answers,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Answers.Select(LineOf)];

    private WorkedLine LineOf(LimeMethodAnswer answer)
    {
        var method = answer.Method;
        if (answer.Common is not { } common || answer.Need.Rate is not { } own)
        {
            string why = answer.WhyNot ?? answer.Need.Findings[0].Text;
            return LimingFormulas.All["lime-no-rate"].Line(why, ("what", method.Name)).From(method.Origin);
        }

        return LimingFormulas
            .All["lime-on-common-basis"]
            .Line(
                $"{LimeText.Tons(common.PoundsPerAcre)} ton/ac of {Material.Name}, {LimeText.Inches(Depth)} in deep",
                ("method", method.Name),
                ("its rate", LimeText.Tons(own.OfBasis.PoundsPerAcre)),
                ("common depth", LimeText.Inches(Depth)),
                ("its depth", LimeText.Inches(own.Depth)),
                ("common lime for its lime", Amounts.Print(own.FactorFor(Material), 4))
            )
            .From(method.Origin);
    }

    private static IEnumerable<Finding> FindingsOf(ImmutableArray<LimeMethodAnswer> answers, ApplicationRate? spread)
    {
        if (spread is { } difference)
        {
            yield return FindingCatalog.Create(LimingCodes.ComparisonSpread, ("spread", LimeText.Tons(difference.PoundsPerAcre)));
        }

        foreach (var answer in answers)
        {
            if (answer.WhyNot is { } reason)
            {
                yield return FindingCatalog.Create(LimingCodes.NotComparable, ("method", answer.Method.Name), ("reason", reason));
            }

            foreach (var finding in answer.Need.Findings)
            {
                yield return finding;
            }
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
