#:property TreatWarningsAsErrors=false
#:property EnforceCodeStyleInBuild=false
#:property RunAnalyzers=false
using System.Globalization;
using System.Text.Json;

// Prints the mutants of a report that no test noticed, file by file, and ends with the score: Survivors.cs REPORT FOLDER
using var report = JsonDocument.Parse(File.ReadAllText(args[0]));
int noticed = 0, unnoticed = 0;
foreach (var file in report.RootElement.GetProperty("files").EnumerateObject().OrderBy(f => f.Name, StringComparer.Ordinal))
{
    string[] lines = file.Value.GetProperty("source").GetString()!.Split('\n');
    // Lines that were put in to leave things out do not count.
    int[] real = new int[lines.Length];
    for (int i = 0, number = 0; i < lines.Length; i++)
    {
        real[i] = lines[i].Contains("// Stryker disable", StringComparison.Ordinal) ? number : ++number;
    }

    foreach (var mutant in file.Value.GetProperty("mutants").EnumerateArray())
    {
        string status = mutant.GetProperty("status").GetString()!;
        noticed += status is "Killed" or "Timeout" ? 1 : 0;
        if (status is "Survived" or "NoCoverage")
        {
            unnoticed++;
            int line = mutant.GetProperty("location").GetProperty("start").GetProperty("line").GetInt32();
            string replacement = mutant.GetProperty("replacement").GetString()!;
            string becomes = string.Join(' ', replacement.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            string never = status == "NoCoverage" ? " (no test comes there)" : "";
            string path = Path.GetRelativePath(args[1], file.Name).Replace('\\', '/');
            Console.WriteLine($"{path}:{real[line - 1]}: {lines[line - 1].Trim()}  =>  {becomes}{never}");
        }
    }
}

double score = 100.0 * noticed / Math.Max(1, noticed + unnoticed);
int all = noticed + unnoticed;
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{all} mutants, {noticed} noticed: {score:0.0} %"));
