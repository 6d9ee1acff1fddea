using System.Text.Json;
using System.Text.Json.Nodes;

namespace PlotAgronomy.Tests.Support;

/// <summary>A demo plan with some of its fields changed.</summary>
internal static class EditedPlan
{
    internal static string Of(string demo, Action<JsonNode> change)
    {
        var plan = JsonNode.Parse(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json")), documentOptions: new() { CommentHandling = JsonCommentHandling.Skip })!;
        change(plan);
        return plan.ToJsonString(new() { WriteIndented = true });
    }

    /// <summary>One field set; the path is written with dots, and numbers are places in lists.</summary>
    internal static string With(string demo, string path, string json) =>
        Of(demo, plan => Set(plan, path, JsonNode.Parse(json)));

    internal static void Set(JsonNode plan, string path, JsonNode? value)
    {
        string[] steps = path.Split('.');
        var at = plan;
        foreach (string step in steps[..^1])
        {
            at = int.TryParse(step, out int place) ? at[place]! : at[step]!;
        }

        if (int.TryParse(steps[^1], out int last))
        {
            at[last] = value;
        }
        else
        {
            at[steps[^1]] = value;
        }
    }
}
