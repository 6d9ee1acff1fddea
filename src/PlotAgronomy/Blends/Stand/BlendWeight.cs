using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What to weigh out of one bag.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BlendWeight
{
    internal BlendWeight() { }

    /// <summary>Gets what is weighed.</summary>
    public required BlendComponent Component { get; init; }

    /// <summary>Gets the bulk weight.</summary>
    public required BulkSeedMass Weight { get; init; }

    /// <summary>The kind and its weight.</summary>
    /// <returns>Text such as <c>Buckwheat 12 lb bulk</c>.</returns>
    public override string ToString() => $"{Component.Kind.ShortName} {Weight}";
}
