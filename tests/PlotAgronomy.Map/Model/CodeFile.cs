using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Model;

/// <summary>A file of code and where it stands.</summary>
internal sealed record CodeFile(string Path, Part Part, string ProjectFolder, string Namespace, int Lines);
