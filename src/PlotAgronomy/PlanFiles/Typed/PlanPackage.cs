using System.Text.Json;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a package holds: a weight, or a volume of a liquid.</summary>
/// <param name="example">Example for schema, page and messages.</param>
internal sealed class PlanPackage(string example) : PlanValue<PackageSize>
{
    private readonly PlanValue<Mass> weight = Value.Mass(example);
    private readonly PlanValue<Volume> volume = Value.Volume("2.5 gal");

    internal override string InWords => weight.InWords;

    internal override void Describe(Utf8JsonWriter schema) => weight.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, out PackageSize value)
    {
        bool isVolume = Amounts.TryReadVolume(node.Text, out _, out _);
        Volume jug = default;
        Mass bag = default;
        bool read = isVolume ? volume.TryRead(node, at, out jug) : weight.TryRead(node, at, out bag);
        value = isVolume ? new(null, jug) : new(bag, null);
        return read;
    }

    internal override PlanNode? Write(PackageSize value, string path, List<PlanProblem> refusals) =>
        value.Volume is { } jug ? volume.Write(jug, path, refusals) : weight.Write(value.Weight!.Value, path, refusals);
}

/// <summary>A weight, or a volume.</summary>
internal readonly record struct PackageSize(Mass? Weight, Volume? Volume);
