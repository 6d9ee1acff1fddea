using System.Text;
using System.Text.Json;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The comments of a plan file, kept at the head of the one that follows it.</summary>
internal static class KeptComments
{
    internal static string Of(string json, string name)
    {
        var kept = new StringBuilder();
        var reader = new Utf8JsonReader(
            Encoding.UTF8.GetBytes(json.TrimStart('\uFEFF')),
            new JsonReaderOptions { CommentHandling = JsonCommentHandling.Allow, AllowTrailingCommas = true }
        );
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.Comment)
            {
                foreach (string line in reader.GetComment().Split('\n'))
                {
                    kept.Append(System.Globalization.CultureInfo.InvariantCulture, $"// {line.Trim()}\n");
                }
            }
        }

        return kept.Length > 0 ? $"// Remarks kept from {name}:\n{kept}" : "";
    }
}
