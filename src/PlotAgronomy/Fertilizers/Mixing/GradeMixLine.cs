using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>One material of a blended batch.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GradeMixLine
{
    /// <summary>Gets the material.</summary>
    public required FertilizerProduct Material
    {
        get;
        init => field = Guard.NotNull(value, nameof(Material));
    }

    /// <summary>Gets its weight in the batch.</summary>
    public required Mass Mass { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Mass, "lb", 2)} of {Material.Name}";
}
