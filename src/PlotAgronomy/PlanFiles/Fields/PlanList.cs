using System.Collections.Immutable;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A list; items with a mistake are reported and left out.</summary>
internal sealed class PlanList<TRead, TWrite>(PlanValue<TRead, TWrite> item, int fewest)
    : PlanValue<ImmutableArray<TRead>, ImmutableArray<TWrite>>
{
    internal override IPlanDefinition? Definition => item.Definition;

    internal override bool IsList => true;

    internal override string InWords => $"list of {item.InListWords}";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "array");
        schema.WriteStartObject("items");
        item.Describe(schema);
        schema.WriteEndObject();
        schema.WriteNumber("maxItems", (int)PlanLimits.All["list-items"]);
        if (fewest > 0)
        {
            schema.WriteNumber("minItems", fewest);
        }
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out ImmutableArray<TRead> value)
    {
        value = [];
        if (node.Kind != PlanNodeKind.Array)
        {
            at.Report(node, $"expected a list, found {node.Describe()}");
            return false;
        }

        double most = PlanLimits.All["list-items"];
        if (node.Items.Count > most)
        {
            at.Report(node, $"a list has at most {Amounts.Print(most, 0)} items");
            return false;
        }

        if (node.Items.Count < fewest)
        {
            at.Report(
                node,
                $"expected at least {Amounts.PrintCount(fewest, "item")}, found {Amounts.Print(node.Items.Count, 0)}"
            );
        }

        var read = ImmutableArray.CreateBuilder<TRead>();
        foreach (var each in node.Items)
        {
            if (item.TryRead(each, at, out var found))
            {
                read.Add(found);
            }
        }

        value = read.ToImmutable();
        return true;
    }

    internal override PlanNode Write(ImmutableArray<TWrite> value, string path, List<PlanProblem> refusals)
    {
        var list = new PlanNode(PlanNodeKind.Array, path);
        foreach (var each in value)
        {
            if (item.Write(each, PlanNode.ItemPath(path, list.Items.Count), refusals) is { } written)
            {
                list.Items.Add(written);
            }
        }

        return list;
    }
}
