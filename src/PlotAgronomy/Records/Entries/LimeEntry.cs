using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Lime that was spread.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record LimeEntry : BookEntry
{
    internal const string Word = "lime";

    /// <summary>Gets the lime.</summary>
    public required LimingMaterial Material
    {
        get;
        init => field = Guard.NotNull(value, nameof(Material));
    }

    /// <summary>Gets the loads that were spread.</summary>
    public required ImmutableArray<SpreadLoad> Loads
    {
        get;
        init => field = SpreadLoad.AtLeastOne(value, nameof(Loads));
    }

    /// <summary>Gets a value indicating whether it was worked into the soil; null where it is not stated.</summary>
    public bool? IsWorkedIn { get; init; }

    /// <summary>Gets the weight of all its loads.</summary>
    public Mass Weight => SpreadLoad.WeightOf(Loads);

    internal override string What => Word;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

    internal override void Write(FieldWriter to)
    {
        MaterialFields.Write(to, Material);
        to.Flag("worked-in", IsWorkedIn);
        foreach (var load in Loads)
        {
            load.Write(to.Part());
        }
    }

    internal static LimeEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Material = MaterialFields.Read(from),
            IsWorkedIn = from.FlagOrNull("worked-in"),
            Loads = [.. from.Parts.Select(SpreadLoad.Read)],
        };
}
