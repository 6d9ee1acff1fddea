using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>One material of a blended batch.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GradeMixLine
{
    /// <summary>Gets the material.</summary>
    public required FertilizerProduct Material { get; init; }

    /// <summary>Gets its weight in the batch.</summary>
    public required Mass Mass { get; init; }
}
