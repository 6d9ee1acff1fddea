using System.Text.Json;
using PlotAgronomy.Land;

namespace PlotAgronomy.PlanFiles;

/// <summary>A length that may be counted in paces; the plan says how long they are.</summary>
/// <param name="example">Example for schema, page and messages.</param>
/// <param name="pace">Field of the plan: the owner's own pace.</param>
internal sealed class PlanWalked(string example, PlanField<PaceCalibration> pace) : PlanValue<MeasuredLength>
{
    private readonly PlanValue<MeasuredLength> taped = Value.Length(example).As(MeasuredLength.FromLength, l => l.ToLength());

    internal override string InWords => $"{taped.InWords}, or paces, such as `57 paces`";

    internal override void Describe(Utf8JsonWriter schema) => taped.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, out MeasuredLength value)
    {
        value = default;
        if (node.Kind != PlanNodeKind.Text || !PaceText.TryReadCount(node.Text, out var count))
        {
            return taped.TryRead(node, at, out value);
        }

        if (at.Plan.Find(pace) is not { } step)
        {
            if (!at.Plan.Has(pace))
            {
                at.Report(node, $"how long is a pace? state '{pace.Name}' once in the plan, such as {PaceText.Examples}");
            }

            return false;
        }

        if (!at.TryStep(node, () => step.Measure(count), out value))
        {
            return false;
        }

        if (!(value.Feet > 0) || value.Feet > PlanLimits.All["length-high"])
        {
            at.Report(node, $"'{node.Text}' is {value}: is the count right?");
            return false;
        }

        return true;
    }

    internal override PlanNode? Write(MeasuredLength value, string path, List<PlanProblem> refusals) =>
        value.Walked is var (steps, _)
            ? new PlanNode(PlanNodeKind.Text, path, $"{ExactText.Of(steps)} paces")
            : taped.Write(value, path, refusals);
}
