using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>How an institution rounds a rate on its report, as a step of its own.</summary>
public sealed class LimeRounding
{
    private static readonly Lazy<FrozenDictionary<string, LimeRounding>> ByInstitution = new(() =>
        Table
            .Read("Liming/Data/rounding.csv", r => new LimeRounding(r))
            .ToFrozenDictionary(r => r.Institution, StringComparer.OrdinalIgnoreCase)
    );

    private readonly bool down;

    private LimeRounding(CsvRow row)
    {
        double unit = LimeUnits.PerUnit(row);
        Institution = row.Text("institution");
        Step = ApplicationRate.FromPoundsPerAcre(row.Number("step") * unit);
        NoneBelow = ApplicationRate.FromPoundsPerAcre(row.Number("none_below") * unit);
        down = row.YesOrNo("rounds_down");
        SourceId = row.SourceId();
    }

    /// <summary>Gets the institution.</summary>
    public string Institution { get; }

    /// <summary>Gets the step the rate is rounded to.</summary>
    public ApplicationRate Step { get; }

    /// <summary>Gets the rounded rate below which the report says no lime.</summary>
    public ApplicationRate NoneBelow { get; }

    /// <summary>Gets the id of its source.</summary>
    public string SourceId { get; }

    /// <summary>Looks for an institution's rounding.</summary>
    /// <param name="institution">Name of the institution; may be null.</param>
    /// <param name="rounding">The rounding, when the institution prints one.</param>
    /// <returns>True when it prints one.</returns>
    public static bool TryFindForInstitution(string? institution, [NotNullWhen(true)] out LimeRounding? rounding)
    {
        rounding = institution is null ? null : ByInstitution.Value.GetValueOrDefault(institution);
        return rounding is not null;
    }

    /// <summary>Rounds a rate as the report does.</summary>
    /// <param name="rate">Rate.</param>
    /// <returns>The rate to print: to the nearest step (a half goes up), or down where the institution does so; none below its
    /// limit.</returns>
    public ApplicationRate Apply(ApplicationRate rate)
    {
        double steps = Math.Round(rate / Step, 9, MidpointRounding.AwayFromZero);
        double whole = down ? Math.Floor(steps) : Math.Round(steps, MidpointRounding.AwayFromZero);
        double rounded = whole * Step.PoundsPerAcre;
        return ApplicationRate.FromPoundsPerAcre(Tolerance.IsBelow(rounded, NoneBelow.PoundsPerAcre) ? 0 : rounded);
    }
}
