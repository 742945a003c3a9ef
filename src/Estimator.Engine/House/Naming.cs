namespace Estimator.Engine.House;

/// <summary>What people read for a thing: the name that the user gave it, else its id.</summary>
public static class Naming
{
    /// <summary>What a room is called.</summary>
    public static string Called(this Room room) => Or(room.Name, room.Id);

    /// <summary>What a level is called.</summary>
    public static string Called(this Level level) => Or(level.Name, level.Id);

    /// <summary>What a building is called.</summary>
    public static string Called(this Building building) => Or(building.Name, building.Id);

    /// <summary>What a panel is called.</summary>
    public static string Called(this Panel panel) => Or(panel.Name, panel.Id);

    private static string Or(string name, string id) => name.Length > 0 ? name : id;
}
